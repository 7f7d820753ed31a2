using System.Text.Json;
using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>A row of the table of taxa.</summary>
internal sealed record TaxonRow
{
    public long Number { get; init; }

    public string Id { get; init; } = "";

    public string ScientificName { get; init; } = "";

    public string? Authorship { get; init; }

    public string? Rank { get; init; }

    public string? VernacularName { get; init; }

    public string? ParentId { get; init; }

    public string? Group { get; init; }

    public string? AggregateId { get; init; }

    public long? GeneraliseTo { get; init; }

    public long? FirstYear { get; init; }

    public string Notes { get; init; } = "{}";

    public static TaxonRow Of(Taxon taxon) => new()
    {
        Id = taxon.Id,
        ScientificName = taxon.ScientificName,
        Authorship = taxon.Authorship,
        Rank = taxon.Rank,
        VernacularName = taxon.VernacularName,
        ParentId = taxon.ParentId,
        Group = taxon.Group,
        AggregateId = taxon.AggregateId,
        GeneraliseTo = (long?)taxon.GeneraliseTo,
        FirstYear = taxon.FirstYear,
        Notes = JsonSerializer.Serialize(taxon.Notes),
    };

    public Taxon ToTaxon() => new(Id, ScientificName)
    {
        Number = (int)Number,
        Authorship = Authorship,
        Rank = Rank,
        VernacularName = VernacularName,
        ParentId = ParentId,
        Group = Group,
        AggregateId = AggregateId,
        GeneraliseTo = (SquareSize?)(int?)GeneraliseTo,
        FirstYear = (int?)FirstYear,
        Notes = JsonSerializer.Deserialize<Dictionary<string, string>>(Notes) ?? [],
    };
}
