namespace RangeMap.Maps;

/// <summary>The marks of printed maps: in colour those of the legends, in black patterns that darken from the first class to the last.</summary>
public static class ClassMarks
{
    /// <summary>Classes at most that patterns of black tell apart.</summary>
    public const int MostInBlack = 5;

    private const string Black = "#000000";

    // From light to dark.
    private static readonly ClassMark[] Patterns =
    [
        new(Black, Core: 0, Framed: true),
        new(Black, Core: 0.34, Framed: true),
        new(Black, Core: 0, Framed: true, Barred: true),
        new(Black, Core: 0.62, Framed: true),
        new(Black),
    ];

    /// <summary>Classes at most that a map can show with an ink.</summary>
    public static int Most(PrintInk ink) => ink == PrintInk.Black ? MostInBlack : Legend.MostYearClasses;

    /// <summary>A mark for each of a number of ordered classes, the last the darkest.</summary>
    /// <param name="legend">The classes.</param>
    /// <param name="ink">What is printed with.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are more classes than can be told apart.</exception>
    public static IReadOnlyList<ClassMark> Of(Legend legend, PrintInk ink)
    {
        ArgumentNullException.ThrowIfNull(legend);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(legend.Classes.Count, Most(ink), nameof(legend));
        return ink == PrintInk.Colour
            ? [.. legend.Classes.Select(part => new ClassMark(part.Colour.Light))]
            : [.. Pattern(legend.Classes.Count).Select(i => Patterns[i])];
    }

    /// <summary>The marks of <see cref="FateLegend.Classes"/>.</summary>
    public static IReadOnlyList<ClassMark> OfFates(PrintInk ink) => [.. FateLegend.Classes.Select(part => OfFate(part.Value, ink == PrintInk.Black ? Black : part.Colour.Light, ink))];

    private static ClassMark OfFate(string fate, string colour, PrintInk ink) => fate switch
    {
        "gained" => new(colour),
        "lost" => new(colour, Core: 0, Framed: true, Barred: true),
        "kept" => ink == PrintInk.Black ? new(colour, Core: 0.4, Framed: true) : new(colour),
        "not-surveyed-before" => new(colour, Core: 0.45),
        _ => new(colour, Core: 0.55, Hollow: true),
    };

    /// <summary>Which patterns a number of classes take: the lightest first, the darkest last.</summary>
    private static int[] Pattern(int classes) => classes switch
    {
        0 => [],
        1 => [4],
        2 => [0, 4],
        3 => [0, 3, 4],
        4 => [0, 1, 3, 4],
        _ => [0, 1, 2, 3, 4],
    };
}
