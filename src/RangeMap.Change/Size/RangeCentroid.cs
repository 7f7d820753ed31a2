namespace RangeMap.Change;

/// <summary>The middle of a range, the mean of the middles of its squares, and how far and where it moved (docs/methods/range-size.md, eq. 10 and 11).</summary>
public static class RangeCentroid
{
    /// <summary>The middle of a taxon's squares in a period; null where it was not found.</summary>
    public static PlanePoint? Of(GroupSurvey survey, SurveyPeriod period, int taxon)
    {
        var finds = period.Found.OfTaxon(taxon);
        var (x, y) = (0.0, 0.0);
        foreach (var find in finds)
        {
            var centre = survey.Squares[find.Index].Centre;
            (x, y) = (x + centre.X, y + centre.Y);
        }

        return finds.IsEmpty ? null : new(x / finds.Length, y / finds.Length);
    }

    internal static ChangeEstimate Measure(SurveyFrame frame, TaxonRange range)
    {
        var (options, n) = (frame.Options, range.Squares.Length);
        if (range.CountBefore == 0 || range.CountAfter == 0)
            return Refuse(SizeWords.MissingIn(range.CountBefore));
        if (Math.Min(range.CountBefore, range.CountAfter) < options.MinimumSquares)
            return Refuse(SizeWords.TooFewForCentroid(range.CountBefore, range.CountAfter, options.MinimumSquares));
        var (blocks, least) = (HeldBlocks.Of(frame.Tiles, range.Squares), Math.Max(3, options.MinimumBlocks));
        if (blocks.Count < least)
            return Refuse(SizeWords.TooFewBlocks(blocks.Count, least, options.BlockSquares * frame.SideKm));

        var (east, north, _, _) = Shift(frame, range, null);
        var km = Math.Sqrt(east * east + north * north);
        var bearing = Math.Atan2(east, north);
        var ahead = new CentroidByBlock(frame, range, blocks, Math.Sin(bearing), Math.Cos(bearing));
        if (blocks.Variance(ahead.Shift) is not { } drawn)
            return Refuse(SizeWords.NoDraws);

        var place = frame.SideKm * frame.SideKm / 12 * (1.0 / range.CountBefore + 1.0 / range.CountAfter);
        var half = Math.Sqrt(HotellingSquare(blocks.Count) * Math.Max(drawn, place));
        return ChangeEstimate.Of(range.Taxon, ChangeMethods.Centroid, "km", n, km, new(Math.Max(0, km - half), km + half)) with { Note = NoteOf(frame, range, bearing) };

        ChangeEstimate Refuse(string reason) => ChangeEstimate.Refuse(range.Taxon, ChangeMethods.Centroid, "km", n, reason);
    }

    // Hotelling's bound for a shift of two coordinates from b blocks, 2 (b-1) / (b-2) F(95 %; 2, b-2), where F has a closed form. The wider
    // bound is needed because the direction is not given but chosen by the data.
    private static double HotellingSquare(int blocks) => (blocks - 1) * (Math.Pow(0.05, -2.0 / (blocks - 2)) - 1);

    private static string NoteOf(SurveyFrame frame, TaxonRange range, double bearing)
    {
        var (east, north, before, after) = Shift(frame, range, frame.SurveyedBoth);
        double? km = before > 0 && after > 0 ? Math.Sqrt(east * east + north * north) : null;
        return SizeWords.Centroid((bearing * 180 / Math.PI + 360) % 360, km, frame.SurveyedBoth.AsSpan().Count(true));
    }

    private static (double East, double North, int Before, int After) Shift(SurveyFrame frame, TaxonRange range, bool[]? among)
    {
        var (x1, y1, n1, x2, y2, n2) = (0.0, 0.0, 0, 0.0, 0.0, 0);
        for (var i = 0; i < range.Squares.Length; i++)
        {
            var square = range.Squares[i];
            if (among is not null && !among[square])
                continue;
            if (range.Before[i] > 0)
                (x1, y1, n1) = (x1 + frame.X[square], y1 + frame.Y[square], n1 + 1);
            if (range.After[i] > 0)
                (x2, y2, n2) = (x2 + frame.X[square], y2 + frame.Y[square], n2 + 1);
        }

        return n1 > 0 && n2 > 0 ? (x2 / n2 - x1 / n1, y2 / n2 - y1 / n1, n1, n2) : (0, 0, n1, n2);
    }

    /// <summary>The shift along one direction of any draw of blocks.</summary>
    private sealed class CentroidByBlock
    {
        private readonly (int Before, int After)[] _counts;
        private readonly (double Before, double After)[] _sums;

        public CentroidByBlock(SurveyFrame frame, TaxonRange range, HeldBlocks blocks, double east, double north)
        {
            (_counts, _sums) = (new (int, int)[blocks.Count], new (double, double)[blocks.Count]);
            // Distances from a place of the range itself, lest large coordinates cost digits.
            var (x, y) = (frame.X[range.Squares[0]], frame.Y[range.Squares[0]]);
            for (var i = 0; i < range.Squares.Length; i++)
            {
                var (block, along) = (blocks.Of(range.Squares[i]), (frame.X[range.Squares[i]] - x) * east + (frame.Y[range.Squares[i]] - y) * north);
                var (before, after) = (Math.Min(1, range.Before[i]), Math.Min(1, range.After[i]));
                _counts[block] = (_counts[block].Before + before, _counts[block].After + after);
                _sums[block] = (_sums[block].Before + before * along, _sums[block].After + after * along);
            }
        }

        public double Shift(ReadOnlySpan<byte> times)
        {
            var (n1, s1, n2, s2) = (0, 0.0, 0, 0.0);
            for (var block = 0; block < times.Length; block++)
            {
                int k = times[block];
                (n1, n2) = (n1 + k * _counts[block].Before, n2 + k * _counts[block].After);
                (s1, s2) = (s1 + k * _sums[block].Before, s2 + k * _sums[block].After);
            }

            return s2 / n2 - s1 / n1;
        }
    }
}
