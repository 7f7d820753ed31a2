namespace RangeMap.Records;

/// <summary>The names by which columns are recognised, all compared without regard to case, spaces, underscores, hyphens and points.</summary>
public static class TermNames
{
    private static readonly string[] Prefixes = ["dwc:", "dcterms:", "http://rs.tdwg.org/dwc/terms/", "https://rs.tdwg.org/dwc/terms/", "eco:", "http://rs.tdwg.org/eco/terms/"];

    /// <summary>Plain names in use beside the official one.</summary>
    private static readonly Dictionary<Term, string[]> PlainNames = new()
    {
        [Term.OccurrenceId] = ["record id", "record key", "recordid"],
        [Term.TaxonId] = ["taxon key", "species id", "species code", "taxon code"],
        [Term.ScientificName] = ["species", "taxon", "name", "latin name", "species name", "taxon name"],
        [Term.VernacularName] = ["common name", "english name"],
        [Term.IdentificationQualifier] = ["qualifier"],
        [Term.EventDate] = ["date", "date seen", "date of record", "observation date", "record date", "day seen"],
        [Term.StartDate] = ["date from", "from date", "date start", "first date"],
        [Term.EndDate] = ["date to", "to date", "date end", "last date"],
        [Term.Year] = ["yr"],
        [Term.Month] = [],
        [Term.Day] = [],
        [Term.GridReference] = ["grid ref", "gridref", "grid", "map reference", "map ref", "ngr", "os grid ref", "os grid reference", "national grid reference", "spatial reference"],
        [Term.DecimalLatitude] = ["lat", "latitude"],
        [Term.DecimalLongitude] = ["lon", "long", "lng", "longitude"],
        [Term.CoordinateUncertaintyInMeters] = ["accuracy", "uncertainty", "coordinate uncertainty", "coordinate uncertainty (m)", "accuracy (m)", "coordinateUncertaintyInMetres"],
        [Term.GeodeticDatum] = ["datum"],
        [Term.RecordedBy] = ["recorder", "recorders", "observer", "observers", "collector", "seen by"],
        [Term.IdentifiedBy] = ["determiner", "det", "determined by", "identifier"],
        [Term.LifeStage] = ["stage"],
        [Term.Caste] = [],
        [Term.Sex] = ["gender"],
        [Term.IndividualCount] = ["count", "quantity", "abundance", "number", "number seen", "how many"],
        [Term.OccurrenceStatus] = ["presence", "present or absent"],
        [Term.IdentificationVerificationStatus] = ["verification", "verification status", "review", "review status", "record status"],
        [Term.Locality] = ["location", "site", "site name", "place", "location name"],
        [Term.OccurrenceRemarks] = ["comment", "comments", "notes", "remarks"],
        [Term.LengthMm] = ["length", "length (mm)", "length in mm", "body length", "body length (mm)", "body length mm"],
        [Term.Evidence] = ["basisOfRecord", "evidence type", "record type"],
        [Term.EvidenceLink] = ["associatedMedia", "photo link", "photo url", "image link", "image url", "media link"],
        [Term.Host] = ["associatedTaxa", "host plant", "plant visited", "flower visited", "plant", "forage plant"],
        [Term.Behaviour] = ["behavior", "activity"],
        [Term.CountryCode] = ["country"],
        [Term.GridSystem] = ["grid reference system", "grid type"],
        [Term.CompleteList] = ["complete checklist", "is complete list", "all species recorded", "all species reported", "isTaxonomicScopeFullyReported", "isSamplingTargetCompletelyReported"],
        [Term.SamplingProtocol] = ["eventType", "protocol", "survey method", "sampling method"],
    };

    private static readonly Dictionary<string, Term> Official = Enum.GetValues<Term>().ToDictionary(t => Plain(Name(t)));

    private static readonly Dictionary<string, Term> Plainly =
        PlainNames.SelectMany(p => p.Value.Select(n => (Name: Plain(n), p.Key))).DistinctBy(p => p.Name).ToDictionary(p => p.Name, p => p.Key);

    /// <summary>The official name, such as occurrenceID or eventDate.</summary>
    public static string Name(Term term) => term switch
    {
        Term.OccurrenceId => "occurrenceID",
        Term.TaxonId => "taxonID",
        _ => char.ToLowerInvariant(term.ToString()[0]) + term.ToString()[1..],
    };

    /// <summary>The term whose official name this is, with or without a prefix; null if there is none.</summary>
    public static Term? FindOfficial(string column) => Official.TryGetValue(Plain(WithoutPrefix(column)), out var term) ? term : null;

    /// <summary>The term that goes by this plain name; null if there is none.</summary>
    public static Term? FindPlain(string column) => Plainly.TryGetValue(Plain(WithoutPrefix(column)), out var term) ? term : null;

    /// <summary>
    /// True for terms that add to a record without changing what, when, where and who: where several plain names claim one, the first in
    /// the order of <see cref="PlainNamesOf"/> has it and the import goes on.
    /// </summary>
    internal static bool IsDetail(Term term) =>
        term is Term.LengthMm or Term.Evidence or Term.EvidenceLink or Term.Host or Term.Behaviour or Term.OccurrenceRemarks or Term.CompleteList or Term.SamplingProtocol;

    /// <summary>The place of a column's name among the plain names of a term; the number of names for any other name.</summary>
    internal static int RankOf(Term term, string column)
    {
        var rank = Array.FindIndex(PlainNames[term], name => Plain(name) == Plain(WithoutPrefix(column)));
        return rank < 0 ? PlainNames[term].Length : rank;
    }

    /// <summary>The plain names of a term, for documents and messages.</summary>
    public static IReadOnlyList<string> PlainNamesOf(Term term) => PlainNames[term];

    private static string WithoutPrefix(string column) =>
        column[(Prefixes.FirstOrDefault(p => column.StartsWith(p, StringComparison.OrdinalIgnoreCase))?.Length ?? 0)..];

    private static string Plain(string name) =>
        string.Concat(name.Where(c => c is not (' ' or '_' or '-' or '.'))).ToUpperInvariant();
}
