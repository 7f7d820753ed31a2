using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>All about a place, in the form of machine output.</summary>
/// <param name="Input">The place as given.</param>
/// <param name="Ok">False when it could not be read.</param>
public sealed record PlaceAnswer(string Input, bool Ok)
{
    /// <summary>Name of the national grid.</summary>
    public string? System { get; init; }

    /// <summary>Grid reference of the square named, or of the one that coordinates support.</summary>
    public string? Name { get; init; }

    /// <summary>Side of that square.</summary>
    public string? Size { get; init; }

    /// <summary>Metres; of the south-west corner, or of the point.</summary>
    public double? Easting { get; init; }

    /// <summary>Metres; of the south-west corner, or of the point.</summary>
    public double? Northing { get; init; }

    /// <summary>Degrees; of the middle of the square, or of the point.</summary>
    public double? Latitude { get; init; }

    /// <summary>Degrees; of the middle of the square, or of the point.</summary>
    public double? Longitude { get; init; }

    /// <summary>Accuracy of the way between the grid and latitude/longitude, metres.</summary>
    public double? AccuracyMetres { get; init; }

    /// <summary>The squares that hold the place, by size; null where it straddles two.</summary>
    public IReadOnlyDictionary<string, string?>? Squares { get; init; }

    /// <summary>The nation of the place (of the middle of a square); null at sea and outside the islands.</summary>
    public string? Nation { get; init; }

    /// <summary>Kilometres to the nearest land when the place is at sea; null on land and outside the islands and their seas.</summary>
    public double? KmFromLand { get; init; }

    /// <summary>The part of the 10 km square that is not sea, 0 to 1; null outside the islands and for 100 km squares.</summary>
    public double? LandShare { get; init; }

    /// <summary>The squares of the same size that touch the one named, clockwise from the north.</summary>
    public IReadOnlyList<string>? Neighbours { get; init; }

    /// <summary>The place (the middle of a square) on every other grid in use there.</summary>
    public IReadOnlyList<OtherSystem>? OtherSystems { get; init; }

    /// <summary>The outline of the square as a GeoJSON polygon, where it was asked for.</summary>
    public OutlineJson? Outline { get; init; }

    /// <summary>What should be said although the place was understood.</summary>
    public IReadOnlyList<string>? Notes { get; init; }

    /// <summary>What is wrong with the place.</summary>
    public string? Error { get; init; }

    /// <summary>True for coordinates, false for a square.</summary>
    internal bool IsPoint { get; init; }

    /// <summary>The square that <see cref="Name"/> names.</summary>
    internal Square Square { get; init; }

    internal static PlaceAnswer Bad(string input, string error) => new(input, false) { Error = error };
}

/// <summary>A place on another grid.</summary>
/// <param name="System">Name of the grid.</param>
/// <param name="Epsg">Code of its plane.</param>
/// <param name="Name">Reference of its square of the same size.</param>
/// <param name="Easting">Metres.</param>
/// <param name="Northing">Metres.</param>
public sealed record OtherSystem(string System, int Epsg, string Name, double Easting, double Northing);

/// <summary>A GeoJSON polygon (RFC 7946): one ring of longitudes and latitudes, anticlockwise.</summary>
/// <param name="Type">Always Polygon.</param>
/// <param name="Coordinates">The ring.</param>
public sealed record OutlineJson(string Type, double[][][] Coordinates);
