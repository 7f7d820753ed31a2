using RangeMap.Grids;

namespace RangeMap.Presence;

/// <summary>
/// The records of one taxon in one square and calendar year: a group of an occurrence cube, which is taxon by square by year. A group without
/// records does not occur, for it would read as an absence.
/// </summary>
/// <param name="Square">The square.</param>
/// <param name="Year">The calendar year (Gregorian).</param>
/// <param name="Records">Counted records, at least 1.</param>
/// <param name="Confirmed">Of these, confirmed by a reviewer.</param>
/// <param name="LeastUncertaintyMetres">Half the diagonal of the finest square that one of the records supports, whole metres.</param>
/// <param name="FirstDay">First possible day of any of them, as <see cref="DateOnly.DayNumber"/>.</param>
/// <param name="LastDay">Last possible day of any of them.</param>
public readonly record struct YearCell(Square Square, int Year, int Records, int Confirmed, int LeastUncertaintyMetres, int FirstDay, int LastDay);

/// <summary>A taxon's cube by square and calendar year. Each record stands in exactly one group, or is counted as left out.</summary>
/// <param name="Cells">The groups, by square and then year.</param>
/// <param name="Omitted">Records that stand in none: wider than a square of the size, wider than a year or outside the days asked, or below the quality.</param>
public sealed record YearCube(IReadOnlyList<YearCell> Cells, Omissions Omitted)
{
    /// <summary>Groups a cube.</summary>
    /// <param name="cube">The taxon's cube.</param>
    /// <param name="size">Side of the squares; a record counts only for a square that wholly holds its own.</param>
    /// <param name="quality">Which records count.</param>
    /// <param name="span">The days asked; a record counts only if all its possible days lie inside, and in one calendar year.</param>
    public static YearCube Of(TaxonCube cube, SquareSize size, Quality quality, Period span)
    {
        var groups = new Dictionary<(long Square, int Year), YearCell>();
        int tooCoarse = 0, between = 0, below = 0;
        foreach (ref readonly var cell in cube.Cells)
        {
            var records = cell.Counts.At(quality);
            var own = Square.FromCode(cell.SquareCode);
            var year = DateOnly.FromDayNumber(cell.FirstDay).Year;
            if (!own.TryCoarsen(size, out var square))
            {
                tooCoarse += cell.Counts.All;
            }
            else if (!span.Contains(cell.FirstDay, cell.LastDay) || DateOnly.FromDayNumber(cell.LastDay).Year != year)
            {
                between += cell.Counts.All;
            }
            else
            {
                below += cell.Counts.All - records;
                if (records > 0)
                    Add(groups, new(square, year, records, cell.Counts.Confirmed, HalfDiagonal(own), cell.FirstDay, cell.LastDay));
            }
        }

        return new([.. groups.Values.OrderBy(cell => cell.Square.Code).ThenBy(cell => cell.Year)], new(tooCoarse, between, below));
    }

    /// <summary>The radius of the circle round a square, rounded to whole metres: 7071 for 10 km, 707 for 1 km, 71 for 100 m.</summary>
    public static int HalfDiagonal(Square square) => (int)Math.Round(square.SideMetres / Math.Sqrt(2));

    private static void Add(Dictionary<(long Square, int Year), YearCell> groups, in YearCell cell)
    {
        ref var group = ref System.Runtime.InteropServices.CollectionsMarshal.GetValueRefOrAddDefault(groups, (cell.Square.Code, cell.Year), out var known);
        group = !known ? cell : cell with
        {
            Records = group.Records + cell.Records,
            Confirmed = group.Confirmed + cell.Confirmed,
            LeastUncertaintyMetres = Math.Min(group.LeastUncertaintyMetres, cell.LeastUncertaintyMetres),
            FirstDay = Math.Min(group.FirstDay, cell.FirstDay),
            LastDay = Math.Max(group.LastDay, cell.LastDay),
        };
    }
}
