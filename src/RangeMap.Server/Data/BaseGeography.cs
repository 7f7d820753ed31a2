using RangeMap.Grids;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Land, squares with land and nations of gis-data, each read when it is first asked for.</summary>
internal static class BaseGeography
{
    private static readonly Lazy<LandArea> LandRead = new(ReadLand);
    private static readonly Lazy<LandSquares> SquaresRead = new(ReadSquares);
    private static readonly Lazy<NamedAreas> NationsRead = new(ReadNations);
    private static readonly Lazy<BaseMap> MapRead = new(ReadMap);

    /// <summary>All that is not sea: the coast, islets and lakes.</summary>
    public static LandArea Land => LandRead.Value;

    /// <summary>The squares that land touches.</summary>
    public static LandSquares Squares => SquaresRead.Value;

    /// <summary>The nations.</summary>
    public static NamedAreas Nations => NationsRead.Value;

    /// <summary>What printed maps show beneath the squares.</summary>
    public static BaseMap Map => MapRead.Value;

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

    private static BaseMap ReadMap()
    {
        using var land = BaseData.Open("land.geojson");
        using var borders = BaseData.Open("borders.geojson");
        return BaseMap.Read(land, borders, new[] { GridId.British, GridId.Irish, GridId.ChannelIslands }.SelectMany(grid => Squares.Of(grid, SquareSize.Km10)));
    }
}
