using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>Finds places by name, grid reference or coordinates.</summary>
internal static class PlaceEndpoints
{
    private const int MostPlaces = 20;

    public static void MapPlaces(this RouteGroupBuilder api) =>
        api.MapGet("/places", Find).WithTags("Places").WithSummary("Towns by name; a grid reference or coordinates give the place itself.");

    private static PlacesJson Find(Gazetteer gazetteer, string? q = null)
    {
        var typed = (q ?? "").Trim();
        if (typed.Length == 0)
            return new([]);
        var exact = DescribePlace.Answer(typed);
        // Coordinates elsewhere in the world are no place of this map.
        if (exact is { Ok: true, Name: { } name, Latitude: { } latitude, Longitude: { } longitude } && (!exact.IsPoint || NationalGrid.ForPlace(new(latitude, longitude)) is not null))
            return new([new(name, exact.System!, name, latitude, longitude)]);
        return new([.. gazetteer.Find(typed).Take(MostPlaces).Select(Of)]);
    }

    private static PlaceJson Of(TownPlace town)
    {
        var grid = NationalGrid.ForPlace(town.Place);
        var square = grid is null ? null : SquareFinder.SquareAt(grid, town.Place, SquareSize.Km10)?.ToString();
        return new(town.Name, town.Country, square, town.Place.Latitude, town.Place.Longitude);
    }
}

/// <summary>Places.</summary>
internal sealed record PlacesJson(IReadOnlyList<PlaceJson> Places);

/// <summary>A place.</summary>
/// <param name="Name">Its name or reference.</param>
/// <param name="Where">Country or national grid.</param>
/// <param name="Square">The 10 km square that holds it, or the reference itself.</param>
/// <param name="Latitude">Degrees.</param>
/// <param name="Longitude">Degrees.</param>
internal sealed record PlaceJson(string Name, string Where, string? Square, double Latitude, double Longitude);
