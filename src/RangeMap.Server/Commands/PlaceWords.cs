using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>Writes the answer about a place for people.</summary>
internal static class PlaceWords
{
    public static void Write(TextWriter to, PlaceAnswer answer)
    {
        to.WriteLine(answer.Input);
        if (!answer.Ok)
        {
            to.WriteLine($"  {answer.Error}");
            return;
        }

        var (what, where) = answer.IsPoint ? ("the point", "the point") : ("south-west corner", "middle of the square");
        to.WriteLine($"  {answer.System}, {answer.Name} ({answer.Size})");
        if (Surroundings(answer) is { Length: > 0 } surroundings)
            to.WriteLine($"  {surroundings}");
        to.WriteLine($"  {Metres(answer.Square.Grid, answer.Easting!.Value, answer.Northing!.Value)} ({what})");
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  latitude {answer.Latitude:0.000000}, longitude {answer.Longitude:0.000000} ({where}; converted within {answer.AccuracyMetres:0.###} m)"));
        WriteSquares(to, answer);
        WriteOthers(to, answer);
        foreach (var note in answer.Notes ?? [])
            to.WriteLine($"  note: {note}");
        if (answer.Outline is { } outline)
            to.WriteLine($"  outline: {System.Text.Json.JsonSerializer.Serialize(outline, CommandContext.Json)}");
    }

    private static void WriteSquares(TextWriter to, PlaceAnswer answer)
    {
        to.WriteLine("  squares that hold it");
        foreach (var (size, square) in answer.Squares!)
            to.WriteLine($"    {size,5}  {square ?? "straddles two squares of this size"}");
        if (answer.Neighbours is { Count: > 0 } neighbours)
            to.WriteLine($"  beside {answer.Name}: {string.Join(", ", Beside(answer.Square, neighbours))}");
    }

    private static void WriteOthers(TextWriter to, PlaceAnswer answer)
    {
        if (answer.OtherSystems is not { Count: > 0 } others)
            return;
        to.WriteLine($"  on other grids ({(answer.IsPoint ? "the point" : "middle of the square")})");
        var names = others.Max(other => other.System.Length);
        var squares = others.Max(other => other.Name.Length);
        foreach (var other in others)
            to.WriteLine($"    {other.System.PadRight(names)}  {other.Name.PadRight(squares)}  {Metres(GridOf(other), Math.Round(other.Easting), Math.Round(other.Northing))}");
    }

    private static GridId GridOf(OtherSystem other) => NationalGrid.All.First(grid => grid.Epsg == other.Epsg).Id;

    /// <summary>Nation or distance from land, and the land of the 10 km square.</summary>
    private static string Surroundings(PlaceAnswer answer)
    {
        var place = answer.Nation ?? (answer.KmFromLand is { } km ? $"{(answer.IsPoint ? "" : "middle ")}at sea, {Distance(km)} from land" : null);
        var share = answer.LandShare switch
        {
            null => null,
            1 => "all land",
            0 => "all sea",
            < 0.005 => "less than 1 % land",
            > 0.995 => "more than 99 % land",
            { } part => string.Create(CultureInfo.InvariantCulture, $"{part * 100:0} % land"),
        };
        var hectad = answer.Squares?.GetValueOrDefault("10km");
        return string.Join("; ", new[] { place, share is null ? null : $"{hectad ?? "its 10 km square"} is {share}" }.OfType<string>());
    }

    private static string Distance(double km) => km switch
    {
        < 0.95 => string.Create(CultureInfo.InvariantCulture, $"{Math.Max(10, Math.Round(km * 100) * 10):0} m"),
        < 9.95 => string.Create(CultureInfo.InvariantCulture, $"{km:0.0} km"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{km:0} km"),
    };

    /// <summary>Easting and northing; on UTM the zone stands apart, as people write it.</summary>
    private static string Metres(GridId grid, double easting, double northing)
    {
        var zone = grid is GridId.UtmNorth or GridId.UtmSouth ? (int)(easting / 1_000_000) : 0;
        var text = string.Create(CultureInfo.InvariantCulture, $"easting {easting - zone * 1_000_000.0:0.###} m, northing {northing:0.###} m");
        return zone == 0 ? text : string.Create(CultureInfo.InvariantCulture, $"zone {zone}, {text}");
    }

    /// <summary>The neighbours with their directions; those outside the letters are missing from the list, so each is told by its corner.</summary>
    private static IEnumerable<string> Beside(Square square, IReadOnlyList<string> neighbours) =>
        SquareNeighbours.Of(square).Zip(neighbours, (neighbour, name) => $"{name} {DirectionOf(square, neighbour)}");

    private static string DirectionOf(Square from, Square to) => (Math.Sign(to.Easting - from.Easting), Math.Sign(to.Northing - from.Northing)) switch
    {
        (0, 1) => "N",
        (1, 1) => "NE",
        (1, 0) => "E",
        (1, -1) => "SE",
        (0, -1) => "S",
        (-1, -1) => "SW",
        (-1, 0) => "W",
        _ => "NW",
    };
}
