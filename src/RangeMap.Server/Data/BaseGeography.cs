using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>Land, squares with land and nations of gis-data, each read when it is first asked for.</summary>
internal static class BaseGeography
{
    private static readonly Lazy<LandArea> LandRead = new(ReadLand);
    private static readonly Lazy<LandSquares> SquaresRead = new(ReadSquares);
    private static readonly Lazy<NamedAreas> NationsRead = new(ReadNations);

    /// <summary>All that is not sea: the coast, islets and lakes.</summary>
    public static LandArea Land => LandRead.Value;

    /// <summary>The squares that land touches.</summary>
    public static LandSquares Squares => SquaresRead.Value;

    /// <summary>The nations.</summary>
    public static NamedAreas Nations => NationsRead.Value;

    private static LandArea ReadLand()
    {
        using var coast = BaseData.Open("land.geojson");
        using var islets = BaseData.Open("islets.geojson");
        using var lakes = BaseData.Open("lakes.geojson");
        return LandArea.Read(coast, islets, lakes);
    }

    private static LandSquares ReadSquares()
    {
        using var reader = new StreamReader(BaseData.Open("land-squares.csv"));
        return LandSquares.Read(reader);
    }

    private static NamedAreas ReadNations()
    {
        using var stream = BaseData.Open("nations.geojson");
        return NamedAreas.Read(stream, "nation");
    }
}
