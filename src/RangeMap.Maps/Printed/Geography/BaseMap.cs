using System.Collections.Concurrent;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>What printed maps show beneath the squares: land with its coast and borders, and the lettered squares of the national grids. Made once a process.</summary>
/// <param name="land">The land of the islands, in longitude and latitude; lakes are holes. Where two parts share a border, they share its points.</param>
/// <param name="near">Land of other countries, drawn as a background.</param>
/// <param name="borders">Borders within an island, as lines.</param>
/// <param name="lettered">The 100 km squares that land touches, each on its own grid.</param>
public sealed class BaseMap(IReadOnlyList<GeoPolygon> land, IReadOnlyList<GeoPolygon> near, IReadOnlyList<LatLon[]> borders, IReadOnlyList<Square> lettered)
{
    /// <summary>The value of the property "part" that marks the land of other countries in the files of gis-data.</summary>
    private const string ForeignPart = "near";

    private readonly ConcurrentDictionary<GridId, PlanarBase> _planes = new();

    /// <summary>The 100 km squares with land.</summary>
    internal IReadOnlyList<Square> Lettered => lettered;

    /// <summary>Reads the files of gis-data.</summary>
    /// <param name="landFile">land.geojson.</param>
    /// <param name="bordersFile">borders.geojson; its lines of kind "nation" are taken, as the land has the others as edges of its parts.</param>
    /// <param name="squares">The 10 km squares that land touches.</param>
    /// <exception cref="FormatException">A file holds something else.</exception>
    public static BaseMap Read(Stream landFile, Stream bordersFile, IEnumerable<Square> squares)
    {
        var parts = GeoJsonPolygons.Read(landFile, "part").ToLookup(part => part.Property == ForeignPart, part => part.Polygon);
        var lettered = squares.Select(square => square.TryCoarsen(SquareSize.Km100, out var whole) ? whole : square).Distinct().Order();
        return new([.. parts[false]], [.. parts[true]], BorderLines.Read(bordersFile), [.. lettered]);
    }

    /// <summary>The same on the plane of a national grid.</summary>
    internal PlanarBase On(INationalGrid plane) => _planes.GetOrAdd(plane.Id, _ => PlanarBase.Of(plane, land, near, borders));
}
