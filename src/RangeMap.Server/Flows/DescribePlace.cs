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
        if (CoordinateText.TryParse(input, out var reading, out var whyNoCoordinates))
            return OfPoint(input, reading);
        return PlaceAnswer.Bad(input, LooksLikeCoordinates(input) ? whyNoCoordinates! : whyNoReference!);
    }

    /// <summary>True when the text was rather meant as latitude and longitude than as a grid reference, so that the right complaint is made.</summary>
    private static bool LooksLikeCoordinates(string input)
    {
        var text = input.AsSpan().Trim();
        if (!text.ContainsAnyInRange('0', '9') || BeginsWithZone(text) || HasMetres(text))
            return false;
        return text[0] is '-' or '+' or '.' || char.IsAsciiDigit(text[0]) || text.ContainsAny(".°'\"");
    }

    /// <summary>True for a UTM zone such as 30U with more behind it; 54N 2W, with a quarter of the compass at its end, has none.</summary>
    private static bool BeginsWithZone(ReadOnlySpan<char> text)
    {
        var figures = text.IndexOfAnyExceptInRange('0', '9');
        return figures is 1 or 2 && char.IsAsciiLetter(text[figures..].TrimStart()[0]) && !"NSEWnsew".Contains(text[^1], StringComparison.Ordinal);
    }

    /// <summary>True when the text begins with a whole number of more figures than degrees have.</summary>
    private static bool HasMetres(ReadOnlySpan<char> text) => text.IndexOfAnyExceptInRange('0', '9') is var end && (end < 0 ? text.Length : end) > 3;

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
            Square = square,
        };
    }

    private static PlaceAnswer OfPoint(string input, CoordinateReading reading)
    {
        if (NationalGrid.ForPlaceAnywhere(reading.Position) is not { } grid)
            return PlaceAnswer.Bad(input, "The place lies nearer to a pole than any grid reaches (80 S to 84 N). Latitude comes first, then longitude; west is negative.");
        var point = grid.FromLatLon(reading.Position);
        var metre = Square.At(grid.Id, SquareSize.M1, point);
        var supported = SquareFinder.SquareForCircle(grid, reading.Position, reading.AssumedRadiusMetres);
        var square = supported ?? metre;
        return new(input, true)
        {
            IsPoint = true,
            System = grid.Name,
            Name = square.ToString(),
            Size = square.Size.ToText(),
            Easting = Math.Round(point.Easting, 3),
            Northing = Math.Round(point.Northing, 3),
            Latitude = reading.Position.Latitude,
            Longitude = reading.Position.Longitude,
            AccuracyMetres = grid.AccuracyMetres,
            Squares = Holding(metre),
            Notes = [PrecisionNote(reading.AssumedRadiusMetres, supported)],
            Square = square,
        };
    }

    private static string PrecisionNote(double radius, Square? supported)
    {
        var good = radius >= 1000 ? FormattableString.Invariant($"{radius / 1000:0.#} km") : FormattableString.Invariant($"{radius:0.#} m");
        return supported is { } square
            ? $"as written, the coordinates are good to about {good}, and a record would stand in {square}"
            : $"as written, the coordinates are good to about {good}, too vague for a record in any square";
    }

    private static Dictionary<string, string?> Holding(Square square) =>
        Sizes.Where(size => (int)size >= square.SideMetres)
            .ToDictionary(size => size.ToText(), size => square.TryCoarsen(size, out var container) ? container.ToString() : null);
}
