using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>What a printed map shows.</summary>
internal enum PrintKind
{
    /// <summary>Squares by the latest period with a record.</summary>
    Presence,

    /// <summary>Squares by the first certain year, with lines of the front.</summary>
    Arrivals,

    /// <summary>What became of squares between two periods.</summary>
    Change,
}

/// <summary>A question for a printed map.</summary>
/// <param name="Taxon">The taxon.</param>
/// <param name="Kind">What is shown.</param>
/// <param name="Grid">Side of the squares.</param>
/// <param name="Quality">Which records count.</param>
/// <param name="Periods">The periods, for presence.</param>
/// <param name="Change">The two periods, for change; else null.</param>
/// <param name="Region">The region; null for all.</param>
/// <param name="Size">The paper.</param>
/// <param name="Ink">What it is printed with.</param>
internal sealed record PrintQuestion(
    Taxon Taxon, PrintKind Kind, SquareSize Grid, Quality Quality, string Periods, ChangeQuestion? Change, NamedRegion? Region, PrintSize Size, PrintInk Ink)
{
    /// <summary>Reads a question from the parts of an address or command.</summary>
    /// <exception cref="UserException">A part cannot be read.</exception>
    public static PrintQuestion Of(DataSnapshot data, string taxon, PrintParts parts)
    {
        var kind = KindOf(parts.Kind);
        var change = kind == PrintKind.Change ? ChangeQuestion.Of(parts.Grid, parts.From, parts.To, parts.Quality) : null;
        return new(
            data.Find(taxon), kind, Ask.Size(parts.Grid), Ask.Quality(parts.Quality), parts.Periods ?? "", change,
            KnownRegions.Of(data).Find(parts.Region), SizeOf(parts.Size), InkOf(parts.Ink));
    }

    /// <summary>A kind; presence where none is named.</summary>
    /// <exception cref="UserException">The text is no kind.</exception>
    public static PrintKind KindOf(string? text) => text?.Trim().ToUpperInvariant() switch
    {
        null or "" or "PRESENCE" => PrintKind.Presence,
        "ARRIVALS" => PrintKind.Arrivals,
        "CHANGE" => PrintKind.Change,
        _ => throw new UserException($"'{text}' is no kind of map.", "kind", "Use presence, arrivals or change.") { IsArgument = true },
    };

    private static PrintSize SizeOf(string? text) => text?.Trim().ToUpperInvariant() switch
    {
        null or "" or "PAGE" => PrintSize.Page,
        "COLUMN" => PrintSize.Column,
        _ => throw new UserException($"'{text}' is no size of printed maps.", "size", "Use page (A4) or column (90 mm).") { IsArgument = true },
    };

    private static PrintInk InkOf(string? text) => text?.Trim().ToUpperInvariant() switch
    {
        null or "" or "COLOUR" or "COLOR" => PrintInk.Colour,
        "BLACK" => PrintInk.Black,
        _ => throw new UserException($"'{text}' is no ink.", "ink", "Use colour or black.") { IsArgument = true },
    };
}

/// <summary>The parts of a question as they were written; null for what was not.</summary>
internal sealed record PrintParts(
    string? Kind = null, string? Grid = null, string? Periods = null, string? Quality = null, string? Region = null, string? From = null, string? To = null, string? Size = null, string? Ink = null);
