using CsCheck;

namespace RangeMap.Grids.Tests;

/// <summary>Generators of squares and places.</summary>
internal static class SomeGrids
{
    public static readonly Gen<GridId> Grid = OneOf(GridId.British, GridId.Irish, GridId.ChannelIslands, GridId.ChannelIslandsWgs84,
        GridId.IrishTransverseMercator, GridId.European, GridId.UtmNorth, GridId.UtmSouth, GridId.Dutch);

    public static readonly Gen<SquareSize> Size = OneOf(Enum.GetValues<SquareSize>());

    /// <summary>A point anywhere in the lettered area of a grid.</summary>
    public static Gen<EastNorth> PointOf(GridId grid) => grid switch
    {
        GridId.British => Point(0, 700_000, 0, 1_300_000),
        GridId.Irish => Point(0, 500_000, 0, 500_000),
        GridId.IrishTransverseMercator => Point(400_000, 800_000, 500_000, 1_000_000),
        GridId.European => Point(900_000, 7_400_000, 900_000, 5_500_000),
        GridId.Dutch => Point(0, 300_000, 300_000, 700_000),
        GridId.UtmNorth => Place(0, 84).Select(NationalGrid.Get(grid).FromLatLon),
        GridId.UtmSouth => Place(-80, -0.000001).Select(NationalGrid.Get(grid).FromLatLon),
        _ => Point(500_000, 600_000, 5_400_000, 5_600_000),
    };

    /// <summary>A square of any grid and size.</summary>
    public static readonly Gen<Square> Square =
        from grid in Grid
        from size in Size
        from point in PointOf(grid)
        select Grids.Square.At(grid, size, point);

    /// <summary>A place between two latitudes, degrees, that no rounding moves into another zone.</summary>
    public static Gen<LatLon> Place(double south, double north) =>
        from latitude in Gen.Double[south, north - 0.000001]
        from longitude in Gen.Double[-180, 179.999999]
        where Math.Abs(longitude / 3 - Math.Round(longitude / 3)) > 1e-9 && Math.Abs(latitude / 8 - Math.Round(latitude / 8)) > 1e-9
        select new LatLon(latitude, longitude);

    /// <summary>One of the values given, each as likely.</summary>
    public static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(k => values[k]);

    private static Gen<EastNorth> Point(double west, double east, double south, double north) =>
        from e in Gen.Double[west, east - 0.001]
        from n in Gen.Double[south, north - 0.001]
        select new EastNorth(e, n);
}
