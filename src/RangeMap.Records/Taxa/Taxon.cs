using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>One accepted taxon of the list.</summary>
/// <param name="Id">The taxonID of the list.</param>
/// <param name="ScientificName">Name without authorship.</param>
public sealed record Taxon(string Id, string ScientificName)
{
    /// <summary>The store's number of the taxon; 0 until the store has given one.</summary>
    public int Number { get; init; }

    /// <summary>Authorship of the name.</summary>
    public string? Authorship { get; init; }

    /// <summary>Rank, such as species or aggregate.</summary>
    public string? Rank { get; init; }

    /// <summary>Everyday name.</summary>
    public string? VernacularName { get; init; }

    /// <summary>taxonID of the parent.</summary>
    public string? ParentId { get; init; }

    /// <summary>Taxa recorded together; the unit of effort.</summary>
    public string? Group { get; init; }

    /// <summary>taxonID of the aggregate that this taxon is a member of.</summary>
    public string? AggregateId { get; init; }

    /// <summary>The finest square shown to those without the right to see more; null for a taxon that is not sensitive.</summary>
    public SquareSize? GeneraliseTo { get; init; }

    /// <summary>First year in which the taxon is known from the country.</summary>
    public int? FirstYear { get; init; }

    /// <summary>Season, lengths, known area, confusions, marks and evidence, and columns of unknown meaning, by column name as the list gave them.</summary>
    public IReadOnlyDictionary<string, string> Notes
    {
        get;
        init
        {
            field = value;
            Marks = TaxonMarksText.Read(value, out _);
        }
    } = new Dictionary<string, string>();

    /// <summary>What <see cref="Notes"/> says, understood; what could not be is left out, for the reader of the list refuses it.</summary>
    public TaxonMarks Marks { get; private init; } = TaxonMarks.None;
}
