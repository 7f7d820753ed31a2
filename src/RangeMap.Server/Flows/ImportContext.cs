using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>What reading a file of records needs besides the file: the taxon list, names that people accepted, and what the checks ask.</summary>
internal sealed class ImportContext
{
    private static readonly Lazy<TownCentres> Towns = new(() => new(new Gazetteer().Towns.Select(town => (town.Name, town.Place))));
    private readonly AcceptedNames _accepted;
    private readonly DateOnly _today;

    private ImportContext(CheckContext checks, AcceptedNames accepted, DateOnly today)
    {
        Checks = checks;
        _accepted = accepted;
        _today = today;
    }

    /// <summary>The taxon list.</summary>
    public TaxonList Taxa => Checks.Taxa;

    /// <summary>What the checks may ask.</summary>
    public CheckContext Checks { get; }

    /// <summary>As the data folder stands now.</summary>
    public static ImportContext Of(DataFolder folder, TimeProvider clock) => new(
        ChecksOf(folder, new TaxonStore(folder.Database, clock).Read(), () => new CurrentData(folder.Database, clock).Now()), new AcceptedNameStore(folder.Database, clock).Read(), DateOnly.FromDateTime(clock.GetLocalNow().DateTime));

    /// <summary>What the checks may ask.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="taxa">The taxon list.</param>
    /// <param name="data">The data from which fronts of arriving taxa are told; read only when one is asked for.</param>
    public static CheckContext ChecksOf(DataFolder folder, TaxonList taxa, Func<DataSnapshot> data) => new()
    {
        Taxa = taxa,
        Town = point => Towns.Value.At(point),
        Sea = SeaDistance.Km,
        HasNoSea = SeaDistance.HasNone,
        Areas = KnownRegions.Of(new RegionStore(folder.Database).ReadAll()),
        Front = new KnownFronts(data).KmAhead,
    };

    /// <summary>The options of one import.</summary>
    /// <param name="stated">What is stated about the file.</param>
    /// <param name="expectedRows">About how many rows it has; 0 where that is not known.</param>
    public ImportOptions Options(ImportStatements stated, long expectedRows = 0) => new()
    {
        Today = _today,
        Mapping = stated.Mapping,
        DateOrder = stated.DateOrder,
        NewTaxa = stated.NewTaxa,
        Sheet = stated.Sheet,
        AcceptedNames = _accepted,
        Checks = Checks,
        ExpectedRows = expectedRows,
    };
}
