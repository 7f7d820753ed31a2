using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>The middle of the occupied squares and how far it moved (docs/methods/range-size.md, eq. 9 to 11).</summary>
public static class Centroid
{
    /// <summary>Mean of the centres; null for no squares.</summary>
    public static PlanePoint? Of(IEnumerable<SurveySquare> squares)
    {
        double x = 0, y = 0;
        var n = 0;
        foreach (var square in squares)
        {
            x += square.Centre.X;
            y += square.Centre.Y;
            n++;
        }

        return n == 0 ? null : new(x / n, y / n);
    }

    internal static ChangeEstimate Measure(TaxonSquares taxon)
    {
        const string method = ChangeMethods.Centroid, unit = "km";
        var n = taxon.Before.Length + taxon.After.Length;
        if (taxon.TooFew() is { } reason)
            return ChangeEstimate.Refuse(taxon.Taxon, method, unit, n, reason);
        if (taxon.After.Length == 0)
            return ChangeEstimate.Refuse(taxon.Taxon, method, unit, n, "The taxon was not found in the later period; it may be gone, or have been missed.");
        var (from, to) = (Of(taxon.Before.Select(s => taxon.Squares[s]))!.Value, Of(taxon.After.Select(s => taxon.Squares[s]))!.Value);
        var (xx, xy, yy, blocks) = Covariance(taxon, from, to);
        if (blocks < 4)
            return ChangeEstimate.Refuse(taxon.Taxon, method, unit, n, "All squares lie close together, so the middle has no interval.");
        double east = to.X - from.X, north = to.Y - from.Y;
        var km = Math.Sqrt(east * east + north * north);
        var (ux, uy) = km > 0 ? (east / km, north / km) : (0.0, 1.0);
        // Hotelling: a shift in any direction counts, so the bound is that of the plane and not of a line drawn afterwards.
        var bound = 2.0 * (blocks - 1) / (blocks - 2) * FisherSnedecor.InvCDF(2, blocks - 2, 0.95);
        var reach = Math.Sqrt(bound * Math.Max(0, ux * ux * xx + 2 * ux * uy * xy + uy * uy * yy));
        var bearing = (Math.Atan2(east, north) * 180 / Math.PI + 360) % 360;
        return ChangeEstimate.Of(taxon.Taxon, method, unit, n, km, new(km - reach, km + reach)) with
        {
            Note = FormattableString.Invariant($"The middle of the squares moved towards {bearing:0} degrees from grid north. Where recorders went moves it as well."),
        };
    }

    /// <summary>Covariance of the shift, from the influence of each block on the two means.</summary>
    private static (double Xx, double Xy, double Yy, int Blocks) Covariance(TaxonSquares taxon, PlanePoint from, PlanePoint to)
    {
        var influence = new (double X, double Y, bool Any)[taxon.Blocks.Count];
        Add(taxon.Before, from, -1.0 / taxon.Before.Length);
        Add(taxon.After, to, 1.0 / taxon.After.Length);
        double xx = 0, xy = 0, yy = 0;
        var blocks = 0;
        foreach (var (x, y, any) in influence)
        {
            if (!any)
                continue;
            blocks++;
            (xx, xy, yy) = (xx + x * x, xy + x * y, yy + y * y);
        }

        var scale = blocks > 1 ? blocks / (blocks - 1.0) : 0;
        return (xx * scale, xy * scale, yy * scale, blocks);

        void Add(int[] squares, PlanePoint mean, double weight)
        {
            foreach (var square in squares)
            {
                ref var block = ref influence[taxon.Blocks.OfSquare[square]];
                var centre = taxon.Squares[square].Centre;
                block = (block.X + weight * (centre.X - mean.X), block.Y + weight * (centre.Y - mean.Y), true);
            }
        }
    }
}
