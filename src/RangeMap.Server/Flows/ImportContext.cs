using RangeMap.Grids;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>What reading a file of records needs besides the file: the taxon list, names that people accepted, and what the checks ask.</summary>
internal sealed class ImportContext
{
    private static readonly Lazy<Dictionary<(double, double), string>> Towns = new(CentresOfTowns);
    private readonly AcceptedNames _accepted;
    private readonly DateOnly _today;

    private ImportContext(TaxonList taxa, AcceptedNames accepted, DateOnly today)
    {
        Taxa = taxa;
        _accepted = accepted;
        _today = today;
        Checks = ChecksOf(taxa);
    }

    /// <summary>The taxon list.</summary>
    public TaxonList Taxa { get; }

    /// <summary>What the checks may ask.</summary>
    public CheckContext Checks { get; }

    /// <summary>As the data folder stands now.</summary>
    public static ImportContext Of(DataFolder folder, TimeProvider clock) => new(
        new TaxonStore(folder.Database, clock).Read(), new AcceptedNameStore(folder.Database, clock).Read(), DateOnly.FromDateTime(clock.GetLocalNow().DateTime));

    /// <summary>What the checks may ask, with a taxon list.</summary>
    public static CheckContext ChecksOf(TaxonList taxa) => new() { Taxa = taxa, Town = TownAt, Sea = SeaDistance.Km };

    /// <summary>The options of one import.</summary>
    public ImportOptions Options(ImportStatements stated) => new()
    {
        Today = _today,
        Mapping = stated.Mapping,
        DateOrder = stated.DateOrder,
        NewTaxa = stated.NewTaxa,
        Sheet = stated.Sheet,
        AcceptedNames = _accepted,
        Checks = Checks,
        FileChecks = new(Checks),
    };

    private static string? TownAt(LatLon point) => Towns.Value.GetValueOrDefault((point.Latitude, point.Longitude));

    private static Dictionary<(double, double), string> CentresOfTowns()
    {
        var centres = new Dictionary<(double, double), string>();
        foreach (var town in new Gazetteer().Towns)
            centres.TryAdd((town.Place.Latitude, town.Place.Longitude), town.Name);
        return centres;
    }
}
