using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>The taxa of the data.</summary>
internal static class TaxonEndpoints
{
    private const int DefaultLimit = 50;
    private const int MostTaxa = 1000;

    public static void MapTaxa(this RouteGroupBuilder api)
    {
        var taxa = api.MapGroup("/taxa").WithTags("Taxa");
        taxa.MapGet("/", Find).WithSummary("Taxa whose scientific or everyday name has a word that starts as asked; all, where nothing is asked.");
        taxa.MapGet("/{taxon}", One).WithSummary("One taxon, by identifier or scientific name.");
    }

    private static TaxaJson Find(CurrentData current, string? q = null, int limit = DefaultLimit)
    {
        if (limit < 1)
            throw new UserException($"A limit of {limit} gives no taxa.", "limit", "Use a limit of 1 or more.");
        var found = FindTaxa.Answer(current.Now(), q).ToList();
        return new([.. found.Take(Math.Min(limit, MostTaxa)).Select(TaxonJson.Of)], found.Count);
    }

    private static TaxonDetailJson One(CurrentData current, string taxon)
    {
        var data = current.Now();
        var found = data.Find(taxon);
        var summary = data.Summaries.Single(known => known.Taxon.Number == found.Number);
        var finest = found.GeneraliseTo ?? SquareSize.M100;
        return TaxonDetailJson.Of(summary, data, [.. MapSizes.All.Where(size => (int)size >= (int)finest).Select(size => size.ToText())]);
    }
}

/// <summary>Taxa found.</summary>
/// <param name="Taxa">The first of them, as many as the limit allows.</param>
/// <param name="Found">How many there are in all.</param>
internal sealed record TaxaJson(IReadOnlyList<TaxonJson> Taxa, int Found);

/// <summary>A taxon with what the data hold of it.</summary>
internal sealed record TaxonJson(
    string Id, string ScientificName, string? VernacularName, string? Rank, string? Group, int Records, int? FirstYear, int? LastYear, bool Sensitive)
{
    public static TaxonJson Of(TaxonSummary summary)
    {
        var taxon = summary.Taxon;
        return new(taxon.Id, taxon.ScientificName, taxon.VernacularName, taxon.Rank, taxon.Group, summary.Records, summary.FirstYear, summary.LastYear, taxon.GeneraliseTo is not null);
    }
}

/// <summary>All about a taxon: what <see cref="TaxonJson"/> tells, and more.</summary>
/// <param name="Id">The taxonID.</param>
/// <param name="ScientificName">Name without authorship.</param>
/// <param name="VernacularName">Everyday name.</param>
/// <param name="Rank">Rank.</param>
/// <param name="Group">Taxa recorded together with it.</param>
/// <param name="Records">Records that are not rejected.</param>
/// <param name="FirstYear">First certain year.</param>
/// <param name="LastYear">Last certain year.</param>
/// <param name="Sensitive">True when its places are shown coarser than they are known.</param>
/// <param name="Aggregate">Identifier of the aggregate that it is a member of.</param>
/// <param name="Members">Identifiers of its members, for an aggregate.</param>
/// <param name="Notes">Season, lengths, marks and the like, as the taxon list gave them.</param>
/// <param name="Grids">Square sizes that its maps come in.</param>
internal sealed record TaxonDetailJson(
    string Id, string ScientificName, string? VernacularName, string? Rank, string? Group, int Records, int? FirstYear, int? LastYear, bool Sensitive,
    string? Aggregate, IReadOnlyList<string> Members, IReadOnlyDictionary<string, string> Notes, IReadOnlyList<string> Grids)
{
    public static TaxonDetailJson Of(TaxonSummary summary, DataSnapshot data, IReadOnlyList<string> grids)
    {
        var (taxon, line) = (summary.Taxon, TaxonJson.Of(summary));
        return new(
            line.Id, line.ScientificName, line.VernacularName, line.Rank, line.Group, line.Records, line.FirstYear, line.LastYear, line.Sensitive,
            taxon.AggregateId, [.. data.Members(taxon).Select(member => member.Id)], taxon.Notes, grids);
    }
}
