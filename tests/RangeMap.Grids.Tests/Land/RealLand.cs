namespace RangeMap.Grids.Tests;

/// <summary>The files of gis-data, read once.</summary>
internal static class RealLand
{
    private static readonly Lazy<LandArea> Read = new(() => ReadLand("land.geojson", "islets.geojson", "lakes.geojson"));
    private static readonly Lazy<LandSquares> ReadSquares = new(() =>
    {
        using var reader = new StreamReader(Open("land-squares.csv"));
        return LandSquares.Read(reader);
    });

    /// <summary>Everything but the sea: coast, islets and lakes.</summary>
    public static LandArea Area => Read.Value;

    public static LandSquares Squares => ReadSquares.Value;

    /// <summary>The polygons of a file with the value of their property.</summary>
    public static IReadOnlyList<(string? Property, GeoPolygon Polygon)> Polygons(string file, string property)
    {
        using var stream = Open(file);
        return GeoJsonPolygons.Read(stream, property);
    }

    public static Stream Open(string file) => typeof(RealLand).Assembly.GetManifestResourceStream(file) ?? throw new FileNotFoundException(file);

    public static LandArea ReadLand(params string[] files)
    {
        var streams = files.Select(Open).ToList();
        try
        {
            return LandArea.Read(streams);
        }
        finally
        {
            streams.ForEach(stream => stream.Dispose());
        }
    }
}
