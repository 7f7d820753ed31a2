using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Server;

/// <summary>Reads what a question names, the same for addresses and the command line.</summary>
public static class Ask
{
    /// <summary>A square size; 10 km where none is named.</summary>
    /// <exception cref="UserException">The text is no size that maps come in.</exception>
    public static SquareSize Size(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return SquareSize.Km10;
        return SquareSizeText.TryParse(text, out var size) && size is SquareSize.M100 or SquareSize.Km1 or SquareSize.Km2 or SquareSize.Km5 or SquareSize.Km10 or SquareSize.Km100
            ? size
            : throw new UserException($"'{text}' is no square size.", "grid", "Use 10km, 5km, 2km, 1km, 100m or 100km.") { IsArgument = true };
    }

    /// <summary>A quality; usable where none is named.</summary>
    /// <exception cref="UserException">The text is no quality.</exception>
    public static Quality Quality(string? text) => text?.Trim().ToUpperInvariant() switch
    {
        null or "" or "USABLE" => Presence.Quality.Usable,
        "CONFIRMED" => Presence.Quality.Confirmed,
        "ALL" => Presence.Quality.All,
        _ => throw new UserException($"'{text}' is no quality of records.", "quality", "Use usable, confirmed or all.") { IsArgument = true },
    };

    /// <summary>A list of periods; all dates where none are named.</summary>
    /// <exception cref="UserException">A part is no period.</exception>
    public static IReadOnlyList<Period> Periods(string? text) => PeriodText.TryParseList(text, out var periods, out var why)
        ? periods
        : throw new UserException(why!, "periods", "Write ISO 8601 intervals with commas between them, such as ../1999,2000/2009,2010/.. .") { IsArgument = true };

    /// <summary>A square of any national grid.</summary>
    /// <exception cref="UserException">The text is no grid reference.</exception>
    public static Square Square(string text) => GridReference.TryParse(text, default, out var square, out var why)
        ? square
        : throw new UserException(why!, "square", "Write a grid reference such as NZ25, NZ25C or NZ2456.") { IsArgument = true };

    /// <summary>A file or folder that is there to be read.</summary>
    /// <exception cref="UserException">There is none of this name.</exception>
    public static string FileOrFolder(string path) => Directory.Exists(path) ? path : File(path);

    /// <summary>A file that is there to be read, so that a mistyped name makes no data folder.</summary>
    /// <exception cref="UserException">There is no such file.</exception>
    public static string File(string path) => System.IO.File.Exists(path)
        ? path
        : throw new UserException("The file cannot be read: there is none of this name.", path, "Check its name and that you may read it.");
}
