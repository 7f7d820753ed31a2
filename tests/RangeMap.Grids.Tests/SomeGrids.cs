using CsCheck;

namespace RangeMap.Grids.Tests;

/// <summary>Generators of squares and places.</summary>
internal static class SomeGrids
{
    public static readonly Gen<GridId> Grid = OneOf(GridId.British, GridId.Irish, GridId.ChannelIslands, GridId.ChannelIslandsWgs84);

    public static readonly Gen<SquareSize> Size = OneOf(Enum.GetValues<SquareSize>());

    /// <summary>A point anywhere in the lettered area of a grid.</summary>
    public static Gen<EastNorth> PointOf(GridId grid) => grid switch
    {
        GridId.British => Point(0, 700_000, 0, 1_300_000),
        GridId.Irish => Point(0, 500_000, 0, 500_000),
        _ => Point(500_000, 600_000, 5_400_000, 5_600_000),
    };

    /// <summary>A square of any grid and size.</summary>
    public static readonly Gen<Square> Square =
        from grid in Grid
        from size in Size
        from point in PointOf(grid)
        select Grids.Square.At(grid, size, point);

    /// <summary>One of the values given, each as likely.</summary>
    public static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(k => values[k]);

    private static Gen<EastNorth> Point(double west, double east, double south, double north) =>
        from e in Gen.Double[west, east - 0.001]
        from n in Gen.Double[south, north - 0.001]
        select new EastNorth(e, n);
}
