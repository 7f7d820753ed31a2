using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>All that a printed map says. The same map gives the same bytes.</summary>
public sealed record PrintedMap
{
    /// <summary>Name of the taxon in parts, upright or in italics, such as "Inventa nova" and "agg.".</summary>
    public required IReadOnlyList<NamePart> Name { get; init; }

    /// <summary>Everyday name; null where there is none.</summary>
    public string? VernacularName { get; init; }

    /// <summary>What is shown, in a line.</summary>
    public required string Subject { get; init; }

    /// <summary>The part of the world.</summary>
    public required MapArea Area { get; init; }

    /// <summary>Side of the squares.</summary>
    public required SquareSize Side { get; init; }

    /// <summary>Words above the legend, which say what its numbers count.</summary>
    public required string LegendTitle { get; init; }

    /// <summary>The classes of the legend, in the order in which they are drawn: a later one over an earlier one.</summary>
    public required IReadOnlyList<PrintedClass> Classes { get; init; }

    /// <summary>The squares, each once.</summary>
    public required IReadOnlyList<PrintedSquare> Squares { get; init; }

    /// <summary>Lines of a front; none where none can be measured.</summary>
    public IReadOnlyList<PrintedFront> Fronts { get; init; } = [];

    /// <summary>Where the data come from, in paragraphs: numbers, edition, data sets, base geography.</summary>
    public required IReadOnlyList<string> Source { get; init; }

    /// <summary>Who publishes the data, for the properties of a PDF.</summary>
    public required string Publisher { get; init; }

    /// <summary>When the edition was made: the only time in the files.</summary>
    public required DateTimeOffset EditionMadeAt { get; init; }

    /// <summary>Name of the taxon in one text.</summary>
    public string PlainName => string.Join(' ', Name.Select(part => part.Text));
}

/// <summary>A part of a name.</summary>
/// <param name="Text">One or more words.</param>
/// <param name="Italic">True for names of genera and below.</param>
public readonly record struct NamePart(string Text, bool Italic);

/// <summary>A class of the legend.</summary>
/// <param name="Label">What it is, for people.</param>
/// <param name="Mark">How it is drawn.</param>
public sealed record PrintedClass(string Label, ClassMark Mark);

/// <summary>A square of the map.</summary>
/// <param name="Square">The square.</param>
/// <param name="Class">Index of its class.</param>
public readonly record struct PrintedSquare(Square Square, int Class);

/// <summary>A line of the front.</summary>
/// <param name="Year">The year that it stands for.</param>
/// <param name="Lines">Its parts, on the plane of the British National Grid, metres.</param>
public sealed record PrintedFront(int Year, IReadOnlyList<IReadOnlyList<EastNorth>> Lines);
