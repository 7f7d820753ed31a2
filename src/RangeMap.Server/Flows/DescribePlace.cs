using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>Tells everything about one place: its system, its coordinates both ways, and the squares of every size that hold it.</summary>
public static class DescribePlace
{
    private static readonly SquareSize[] Sizes = [SquareSize.Km100, SquareSize.Km10, SquareSize.Km5, SquareSize.Km2, SquareSize.Km1, SquareSize.M100, SquareSize.M10, SquareSize.M1];

    /// <summary>The answer for a grid reference, or a latitude and longitude. A bad place gives an answer with its error.</summary>
    public static PlaceAnswer Answer(string input)
    {
        if (GridReference.TryParse(input, default, out var square, out var notes, out var whyNoReference))
            return OfSquare(input, square, notes);
        if (!input.AsSpan().ContainsAnyInRange('0', '9') || StartsWithTwoNumbersOrSign(input) is false)
            return PlaceAnswer.Bad(input, whyNoReference!);
        return CoordinateText.TryParse(input, out var reading, out var why) ? OfPoint(input, reading) : PlaceAnswer.Bad(input, why!);
    }

    /// <summary>True when the text looks like numbers for latitude and longitude rather than a grid reference, so that the right complaint is made.</summary>
    private static bool StartsWithTwoNumbersOrSign(string input)
    {
        var text = input.AsSpan().Trim();
        return text[0] is '-' or '+' or '.' || char.IsAsciiDigit(text[0]) || text.ContainsAny(".°'\"");
    }

    private static PlaceAnswer OfSquare(string input, Square square, GridReferenceNotes notes)
    {
        var grid = NationalGrid.Get(square.Grid);
        var centre = grid.ToLatLon(square.Centre);
        return new(input, true)
        {
            System = grid.Name,
            Name = square.ToString(),
            Size = square.Size.ToText(),
            Easting = square.Easting,
            Northing = square.Northing,
            Latitude = centre.Latitude,
            Longitude = centre.Longitude,
            AccuracyMetres = grid.AccuracyMetres,
            Squares = Holding(square),
            Notes = GridReference.InWords(notes),
        };
    }

    private static PlaceAnswer OfPoint(string input, CoordinateReading reading)
    {
        if (NationalGrid.ForPlace(reading.Position) is not { } grid)
            return PlaceAnswer.Bad(input, "The place lies outside the British, Irish and Channel Islands grids. Latitude comes first, then longitude; west is negative.");
        var point = grid.FromLatLon(reading.Position);
        var metre = Square.At(grid.Id, SquareSize.M1, point);
        var supported = SquareFinder.SquareForCircle(grid, reading.Position, reading.AssumedRadiusMetres);
        return new(input, true)
        {
            IsPoint = true,
            System = grid.Name,
            Name = (supported ?? metre).ToString(),
            Size = (supported ?? metre).Size.ToText(),
            Easting = Math.Round(point.Easting, 3),
            Northing = Math.Round(point.Northing, 3),
            Latitude = reading.Position.Latitude,
            Longitude = reading.Position.Longitude,
            AccuracyMetres = grid.AccuracyMetres,
            Squares = Holding(metre),
            Notes = [FormattableString.Invariant($"as written, the coordinates are good to about {reading.AssumedRadiusMetres:0.#} m, and a record would stand in {supported?.ToString() ?? "no square"}")],
        };
    }

    private static Dictionary<string, string?> Holding(Square square) =>
        Sizes.Where(size => (int)size >= square.SideMetres)
            .ToDictionary(size => size.ToText(), size => square.TryCoarsen(size, out var container) ? container.ToString() : null);
}

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

    /// <summary>What should be said although the place was understood.</summary>
    public IReadOnlyList<string>? Notes { get; init; }

    /// <summary>What is wrong with the place.</summary>
    public string? Error { get; init; }

    /// <summary>True for coordinates, false for a square.</summary>
    internal bool IsPoint { get; init; }

    internal static PlaceAnswer Bad(string input, string error) => new(input, false) { Error = error };
}
