using System.Globalization;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>
/// One edition of the data as questions need it: each cube is read once, when first asked for, and then shared. Everything
/// here is already generalised for sensitive taxa, so nothing computed from it can give a hidden place away.
/// </summary>
public sealed class DataSnapshot
{
    private readonly IPublishedState _state;
    private readonly MadeOnce<int, TaxonCube> _own = new();
    private readonly MadeOnce<(int Taxon, SquareSize Size), SizedCube> _sized = new();
    private readonly MadeOnce<(string? Group, SquareSize Size), Effort> _effort = new();
    private readonly Dictionary<int, Taxon> _byNumber;
    private readonly Dictionary<string, Taxon> _byName = new(StringComparer.OrdinalIgnoreCase);

    internal DataSnapshot(IPublishedState state, KeptPastForecasts? past = null)
    {
        (_state, PastForecasts) = (state, past);
        Taxa = SensitiveTaxa.WithInherited(state.ReadTaxa());
        _byNumber = Taxa.ToDictionary(taxon => taxon.Number);
        foreach (var taxon in Taxa)
            _byName.TryAdd(taxon.ScientificName, taxon);
        foreach (var taxon in Taxa)
            _byName[taxon.Id] = taxon;
    }

    /// <summary>Identifier of the frozen edition that this is; null for the live state.</summary>
    public string? FrozenId => _state.FrozenId;

    /// <summary>What outputs name the state by: the frozen edition's identifier, else the live state's number.</summary>
    public string StateName => FrozenId ?? Edition.Number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The live state's number and time; of a frozen edition, those of the state that was frozen.</summary>
    public Edition Edition => _state.Edition;

    /// <summary>The accepted taxa, by number from 1.</summary>
    public IReadOnlyList<Taxon> Taxa { get; }

    /// <summary>Answers worth keeping while the edition lasts.</summary>
    internal AnswerCache Answers { get; } = new();

    /// <summary>Tiles that were sent, by address.</summary>
    internal AddressedTiles Addressed { get; } = new();

    /// <summary>Scores of past forecasts on file; null where none are kept.</summary>
    internal KeptPastForecasts? PastForecasts { get; }

    /// <summary>Taxa with their number of records and years.</summary>
    public IReadOnlyList<TaxonSummary> Summaries => Answers.GetOrMake("summaries", Summarise);

    /// <summary>The taxon of an identifier or scientific name.</summary>
    /// <exception cref="UserException">There is none.</exception>
    public Taxon Find(string name) => _byName.TryGetValue(name, out var taxon) ? taxon : throw UserException.UnknownTaxon(name);

    /// <summary>The taxon of the store's number.</summary>
    /// <exception cref="EditionPassedException">It was added since.</exception>
    public Taxon Taxon(int number) => _byNumber.TryGetValue(number, out var taxon) ? taxon : throw new EditionPassedException();

    /// <summary>The regions that were loaded.</summary>
    internal IReadOnlyList<StoredRegion> Regions => Answers.GetOrMake("regions", () => _state.ReadRegions());

    /// <summary>The taxon list, synonyms included.</summary>
    public TaxonList List => Answers.GetOrMake("list", () => new TaxonList(Taxa, _state.ReadSynonyms()));

    /// <summary>The name of a taxon under which a record was sent; it may have been merged into another since.</summary>
    public string NameOf(int number) => Answers.GetOrMake("names", _state.ReadNames)[number];

    /// <summary>The members of an aggregate; empty for any other taxon.</summary>
    public IEnumerable<Taxon> Members(Taxon aggregate) => Taxa.Where(taxon => taxon.AggregateId == aggregate.Id);

    /// <summary>The taxon's cube. An aggregate's holds its members' records too; a member's never holds the aggregate's.</summary>
    public TaxonCube Cube(Taxon taxon) => TaxonCube.Sum([Own(taxon), .. WithNested(taxon).Select(Own)]);

    /// <summary>The taxon and, for an aggregate, all that it stands for.</summary>
    public IReadOnlyList<Taxon> WithMembers(Taxon taxon) => [taxon, .. WithNested(taxon)];

    /// <summary>The taxon's cube at one square size.</summary>
    public SizedCube Cube(Taxon taxon, SquareSize size) =>
        _sized.GetOrMake((taxon.Number, size), () => SizedCube.Of(Cube(taxon), size));

    /// <summary>Effort of the taxon's group at one square size.</summary>
    public Effort Effort(Taxon taxon, SquareSize size) => _effort.GetOrMake((taxon.Group, size), () => Measure(taxon.Group, size));

    /// <summary>Effort of all groups together at one square size.</summary>
    public Effort EffortOfAll(SquareSize size) => _effort.GetOrMake((AllGroups, size), () => Presence.Effort.Of(Visits, size, _ => true));

    /// <summary>Every visit of a group at one square size, with its list.</summary>
    public IReadOnlyList<VisitList> VisitLists(string? group, SquareSize size)
    {
        var counts = OfGroup(group);
        return VisitList.Of(Visits, size, number => number < counts.Length && counts[number]);
    }

    /// <summary>What the records of a taxon say of its season, an aggregate's with those of its members.</summary>
    public IReadOnlyList<SeasonEntry> Season(Taxon taxon) =>
        Answers.GetOrMake($"season {taxon.Number}", () => _state.ReadSeason([.. WithMembers(taxon).Select(member => member.Number)]));

    private const string AllGroups = "\0all";

    /// <summary>Every visit, generalised.</summary>
    internal VisitLog Visits => Answers.GetOrMake("visits", ReadVisits);

    private Effort Measure(string? group, SquareSize size)
    {
        var counts = OfGroup(group);
        return Presence.Effort.Of(Visits, size, number => number < counts.Length && counts[number]);
    }

    /// <summary>By taxon number, whether a taxon is of the group.</summary>
    private bool[] OfGroup(string? group)
    {
        var counts = new bool[Taxa.Count == 0 ? 1 : Taxa.Max(taxon => taxon.Number) + 1];
        foreach (var taxon in Taxa)
            counts[taxon.Number] = taxon.Group == group;
        return counts;
    }

    private IEnumerable<Taxon> WithNested(Taxon aggregate)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal) { aggregate.Id };
        var open = new Queue<Taxon>([aggregate]);
        while (open.TryDequeue(out var next))
        {
            foreach (var member in Members(next).Where(member => seen.Add(member.Id)))
            {
                open.Enqueue(member);
                yield return member;
            }
        }
    }

    /// <summary>The cube of the records made at the taxon itself, generalised.</summary>
    internal TaxonCube Own(Taxon taxon) => _own.GetOrMake(taxon.Number, () => Generalised(taxon, _state.ReadCube(taxon.Number)));

    private static TaxonCube Generalised(Taxon taxon, TaxonCube cube) =>
        taxon.GeneraliseTo is { } finest ? Generalisation.Generalise(cube, finest) : cube;

    private VisitLog ReadVisits()
    {
        var sensitive = Taxa.Where(taxon => taxon.GeneraliseTo is not null).ToDictionary(taxon => taxon.Number, taxon => taxon.GeneraliseTo);
        var log = _state.ReadVisits();
        return sensitive.Count == 0 ? log : Generalisation.Generalise(log, number => sensitive.GetValueOrDefault(number));
    }

    private List<TaxonSummary> Summarise() => [.. Taxa.Select(taxon => TaxonSummary.Of(taxon, Cube(taxon)))];
}

/// <summary>A taxon with what the data hold of it.</summary>
/// <param name="Taxon">The taxon.</param>
/// <param name="Records">Records that are not rejected.</param>
/// <param name="FirstYear">First certain year; null without records.</param>
/// <param name="LastYear">Last certain year; null without records.</param>
public sealed record TaxonSummary(Taxon Taxon, int Records, int? FirstYear, int? LastYear)
{
    internal static TaxonSummary Of(Taxon taxon, TaxonCube cube)
    {
        int records = 0, first = int.MaxValue, last = int.MinValue;
        foreach (ref readonly var cell in cube.Cells)
        {
            records += cell.Counts.All;
            first = Math.Min(first, cell.LastDay);
            last = Math.Max(last, cell.FirstDay);
        }

        return records == 0 ? new(taxon, 0, null, null) : new(taxon, records, DateOnly.FromDayNumber(first).Year, DateOnly.FromDayNumber(last).Year);
    }
}
