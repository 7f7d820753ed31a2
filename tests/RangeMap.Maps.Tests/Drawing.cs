using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps.Tests;

/// <summary>
/// Presence maps as drawings. The top line is the north, each character a square: . nothing; a records in the first period
/// only; b in the second only; # in both.
/// </summary>
internal static class Drawing
{
    /// <summary>Two invented periods.</summary>
    public static readonly IReadOnlyList<Period> TwoPeriods = Periods("../1999,2000/..");

    public static IReadOnlyList<Period> Periods(string text) =>
        PeriodText.TryParseList(text, out var periods, out var why) ? periods : throw new ArgumentException(why, nameof(text));

    /// <summary>A drawing whose south-west corner stands on a square.</summary>
    public static PresenceMap Of(Square corner, params string[] lines)
    {
        var squares = new List<PresenceSquare>();
        for (var row = 0; row < lines.Length; row++)
        {
            for (var column = 0; column < lines[row].Length; column++)
            {
                var north = corner.Northing + (lines.Length - 1 - row) * corner.SideMetres;
                if (Counts(lines[row][column]) is { } counts)
                    squares.Add(Found(new(corner.Grid, corner.Size, corner.Easting + column * corner.SideMetres, north), counts));
            }
        }

        return Map(corner.Size, TwoPeriods, squares);
    }

    /// <summary>A map of squares in any order.</summary>
    public static PresenceMap Map(SquareSize size, IReadOnlyList<Period> periods, IEnumerable<PresenceSquare> squares) =>
        new(size, Quality.Usable, periods, [.. squares.OrderBy(square => square.Square)], new(1, 2, 3));

    private static PresenceSquare Found(Square square, PeriodCount[] counts) => new(
        square,
        counts.Where(count => count.Records > 0).Min(count => count.FirstYear),
        counts.Where(count => count.Records > 0).Max(count => count.LastYear),
        counts);

    private static PeriodCount[]? Counts(char drawn) => drawn switch
    {
        'a' => [new(2, 1, 3, 1980, 1990), new(0, 0, 4, 0, 0)],
        'b' => [new(0, 0, 0, 0, 0), new(5, 0, 6, 2004, 2020)],
        '#' => [new(2, 1, 3, 1980, 1990), new(5, 0, 6, 2004, 2020)],
        _ => null,
    };
}
