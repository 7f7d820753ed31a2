using RangeMap.Grids;

namespace RangeMap.Presence;

/// <summary>From the cube to a presence map.</summary>
public static class PresenceFold
{
    /// <summary>
    /// Folds a cube into a map. A range of days counts in a period only if it lies wholly inside; what falls between
    /// the periods is reported in <see cref="PresenceMap.Omitted"/>.
    /// </summary>
    /// <param name="cube">The taxon's cube at the size asked.</param>
    /// <param name="periods">At least one period; they may overlap, a record then counts in each that contains it.</param>
    /// <param name="quality">Which records count.</param>
    /// <param name="effort">Visits by square, or null where they are not asked for.</param>
    public static PresenceMap Fold(SizedCube cube, IReadOnlyList<Period> periods, Quality quality, Effort? effort = null)
    {
        var spans = periods.ToArray();
        var squares = new List<PresenceSquare>();
        int betweenPeriods = 0, belowQuality = 0;
        var cells = cube.Cells.AsSpan();
        for (var start = 0; start < cells.Length;)
        {
            var end = start + 1;
            while (end < cells.Length && cells[end].SquareCode == cells[start].SquareCode)
                end++;
            var tally = new SquareTally(spans.Length);
            foreach (ref readonly var cell in cells[start..end])
            {
                var counted = cell.Counts.At(quality);
                belowQuality += cell.Counts.All - counted;
                if (counted != 0 && !tally.TryCount(cell, counted, spans))
                    betweenPeriods += counted;
            }

            if (tally.Any)
                squares.Add(tally.ToSquare(Square.FromCode(cells[start].SquareCode), spans, effort));
            start = end;
        }

        var omitted = new Omissions(cube.TooCoarse.At(quality), betweenPeriods, belowQuality + cube.TooCoarse.All - cube.TooCoarse.At(quality));
        return new(cube.Size, quality, spans, squares, omitted);
    }
}
