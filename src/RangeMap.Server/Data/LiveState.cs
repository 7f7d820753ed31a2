using RangeMap.Presence;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>One state of the live database.</summary>
internal sealed class LiveState(Database database, Edition edition, TimeProvider clock) : IPublishedState
{
    private readonly CubeStore _cubes = new(database);
    private readonly SeasonStore _seasons = new(database);
    private readonly Store.Editions _editions = new(database);
    private readonly TaxonStore _list = new(database, clock);
    private readonly RegionStore _regions = new(database);

    public Edition Edition => edition;

    public string? FrozenId => null;

    public IReadOnlyList<Taxon> ReadTaxa() => _list.ReadTaxa();

    public IReadOnlyList<Synonym> ReadSynonyms() => _list.ReadSynonyms();

    public IReadOnlyDictionary<int, string> ReadNames() => _list.ReadNames();

    public TaxonCube ReadCube(int taxon) => OfThisEdition(_cubes.Read([taxon]));

    public VisitLog ReadVisits() => OfThisEdition(_cubes.ReadVisits());

    public IReadOnlyList<SeasonEntry> ReadSeason(IReadOnlyCollection<int> taxa) => OfThisEdition(_seasons.Read(taxa));

    public IReadOnlyList<StoredRegion> ReadRegions() => OfThisEdition(_regions.ReadAll());

    /// <summary>
    /// What was just read, if it is of this edition. Editions only grow, so when the newest is still this one, it was this
    /// one at the time of reading.
    /// </summary>
    /// <exception cref="EditionPassedException">Something was committed since: what was read may already hold it.</exception>
    private T OfThisEdition<T>(T read) => _editions.Current().Number == Edition.Number ? read : throw new EditionPassedException();
}
