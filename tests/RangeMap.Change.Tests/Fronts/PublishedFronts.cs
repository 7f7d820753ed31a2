namespace RangeMap.Change.Tests;

/// <summary>Series and figures from outside this project, each with its source.</summary>
internal static class PublishedFronts
{
    /// <summary>
    /// Muskrat, central Europe: year and occupied area in square kilometres. A series reprinted in many textbooks after
    /// Skellam 1951 (Biometrika 38:196-218); the areas are from memory, not verified.
    /// </summary>
    internal static readonly (double Year, double SquareKm)[] Muskrat =
        [(1905, 0), (1909, 5400), (1911, 14000), (1915, 37700), (1920, 79300), (1927, 201600)];

    /// <summary>
    /// Sea otter, California, northern front: year and kilometres from the centre. Yearly increments as in a public teaching
    /// script that re-creates Lubina and Levin 1988 (American Naturalist 131:526-543).
    /// </summary>
    internal static readonly ArrivalDistance[] SeaOtter =
    [
        new(22, 1938), new(30, 1947), new(32, 1950), new(35, 1955), new(46, 1957),
        new(52, 1959), new(57, 1963), new(57, 1966), new(63, 1969), new(63, 1972),
    ];

    /// <summary>An invented table of 23 squares; its results were computed with R 4.2.2 and quantreg 5.94.</summary>
    internal static readonly ArrivalDistance[] TwentyThree =
    [
        .. At(2001, 4, 7, 11), .. At(2003, 6, 12, 17, 21), .. At(2005, 9, 16, 24, 28, 31),
        .. At(2007, 14, 22, 33, 38, 41), .. At(2009, 12, 18, 29, 40, 47, 52),
    ];

    /// <summary>An invented front round (0, 0); its boundaries were computed with R 4.2.2.</summary>
    internal static readonly ArrivalPoint[] RoundTheOrigin =
    [
        new(2, 15, 2000), new(12, 1, 2000), new(-3, -8, 2000), new(-9, 2, 2000),
        new(4, 24, 2002), new(22, -4, 2002), new(-1, -12, 2002),
        new(-5, 38, 2004), new(31, 6, 2004), new(6, -13, 2004), new(-20, 1, 2004),
        new(3, 51, 2006), new(45, -10, 2006),
    ];

    private static IEnumerable<ArrivalDistance> At(double year, params double[] distances) =>
        distances.Select(d => new ArrivalDistance(d, year));
}
