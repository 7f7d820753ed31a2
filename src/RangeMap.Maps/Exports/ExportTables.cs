namespace RangeMap.Maps;

/// <summary>The tables that are exported: the one place where their columns are defined.</summary>
public static class ExportTables
{
    private const string Dwc = "http://rs.tdwg.org/dwc/terms/";

    /// <summary>The occurrence cube.</summary>
    public static ExportTable Presence { get; } = new(
        "presence", "Presence by taxon, square and year",
        "One row for each taxon, square and calendar year with records. A row that is not there is an absence of records, not of the taxon. An aggregate's rows count its members' records too: leave aggregates out to add rows up.",
        ExportGeometry.Square,
        [
            new("taxonID", ExportKind.Text, "Identifier of the taxon in the taxon list.", Dwc + "taxonID"),
            new("scientificName", ExportKind.Text, "Scientific name without authorship.", Dwc + "scientificName"),
            new("taxonRank", ExportKind.Text, "Rank of the taxon.", Dwc + "taxonRank", Required: false),
            new("aggregate", ExportKind.Truth, "True where the taxon stands for members whose records are counted here too."),
            new("square", ExportKind.Text, "Grid reference of the square."),
            new("grid", ExportKind.Text, "National grid of the reference: GB (British), IE (Irish), CI and CI-WGS84 (Channel Islands) or another grid's code."),
            new("size", ExportKind.Text, "Side of the square: 100km, 10km, 5km, 2km, 1km or 100m."),
            new("year", ExportKind.Whole, "Calendar year.", Dwc + "year"),
            new("records", ExportKind.Whole, "Number of records of the quality asked whose place and date lie wholly in the square and year."),
            new("confirmed", ExportKind.Whole, "Of these, confirmed by a reviewer."),
            new("visits", ExportKind.Whole, "Recording effort: visits (one square, one day, one recorder or party) with any taxon of the same group noted."),
            new("minCoordinateUncertaintyInMeters", ExportKind.Whole, "Least coordinate uncertainty of the records, metres: half the diagonal of the finest square that one of them supports."),
            new("firstDay", ExportKind.Day, "First possible day of any of the records."),
            new("lastDay", ExportKind.Day, "Last possible day of any of the records."),
        ],
        ["taxonID", "square", "year"]);

    /// <summary>A presence map.</summary>
    public static ExportTable PresenceMap { get; } = new(
        "presence_map", "Presence of one taxon by square and period",
        "One row for each square and period with records.",
        ExportGeometry.Square,
        [
            new("taxon", ExportKind.Text, "Scientific name.", Dwc + "scientificName"),
            new("square", ExportKind.Text, "Grid reference of the square."),
            new("grid", ExportKind.Text, "National grid of the reference."),
            new("size", ExportKind.Text, "Side of the square."),
            new("period", ExportKind.Text, "Period as it was asked, an ISO 8601 interval."),
            new("records", ExportKind.Whole, "Number of records whose place and date lie wholly in the square and period."),
            new("visits", ExportKind.Whole, "Visits to the square in the period with any taxon of the same group noted."),
            new("firstYear", ExportKind.Whole, "First certain year in the period."),
            new("lastYear", ExportKind.Whole, "Last certain year in the period."),
            new("quality", ExportKind.Text, "Which records count: usable, confirmed or all."),
        ],
        ["taxon", "square", "period"]);

    /// <summary>Recording effort, also where a taxon was not found.</summary>
    public static ExportTable Effort { get; } = new(
        "effort", "Recording effort by group, square and year",
        "One row for each group of taxa, square and calendar year with visits.",
        ExportGeometry.Square,
        [
            new("group", ExportKind.Text, "Taxa recorded together.", Required: false),
            new("square", ExportKind.Text, "Grid reference of the square."),
            new("grid", ExportKind.Text, "National grid of the reference."),
            new("size", ExportKind.Text, "Side of the square."),
            new("year", ExportKind.Whole, "Calendar year.", Dwc + "year"),
            new("visits", ExportKind.Whole, "Visits: one square, one day, one recorder or party."),
            new("completeVisits", ExportKind.Whole, "Of these, visits with a list of all taxa of the group that were found."),
            new("meanListLength", ExportKind.Number, "Mean number of taxa of the group noted on a visit."),
        ],
        ["group", "square", "year"]);

    /// <summary>First arrivals.</summary>
    public static ExportTable Arrivals { get; } = new(
        "arrivals", "First arrivals by taxon and square",
        "One row for each taxon and square with records: the first year by whose end the taxon was certainly there.",
        ExportGeometry.Square,
        [
            new("taxonID", ExportKind.Text, "Identifier of the taxon in the taxon list.", Dwc + "taxonID"),
            new("scientificName", ExportKind.Text, "Scientific name without authorship.", Dwc + "scientificName"),
            new("square", ExportKind.Text, "Grid reference of the square."),
            new("grid", ExportKind.Text, "National grid of the reference."),
            new("size", ExportKind.Text, "Side of the square."),
            new("year", ExportKind.Whole, "First certain year.", Dwc + "year"),
        ],
        ["taxonID", "square"]);

    /// <summary>Squares with anything recorded.</summary>
    public static ExportTable Squares { get; } = new(
        "squares", "Squares with records",
        "One row for each square with records of any taxon.",
        ExportGeometry.Square,
        [
            new("square", ExportKind.Text, "Grid reference of the square."),
            new("grid", ExportKind.Text, "National grid of the reference."),
            new("size", ExportKind.Text, "Side of the square."),
            new("records", ExportKind.Whole, "Number of records of the quality asked."),
            new("visits", ExportKind.Whole, "Visits: one square, one day, one recorder or party."),
            new("firstYear", ExportKind.Whole, "First certain year."),
            new("lastYear", ExportKind.Whole, "Last certain year."),
        ],
        ["square"]);

    /// <summary>Single records, with the names of Darwin Core.</summary>
    public static ExportTable Records { get; } = new(
        "records", "Records",
        "One row for each record that is not rejected. Records of sensitive species, and the names of people and sites, are only in exports for those with the right to see them.",
        ExportGeometry.Point,
        [
            new("occurrenceID", ExportKind.Text, "Name of the record for good: it stays the same when the record changes.", Dwc + "occurrenceID"),
            new("datasetID", ExportKind.Text, "Data set that the record belongs to.", Dwc + "datasetID"),
            new("basisOfRecord", ExportKind.Text, "Always HumanObservation: a person saw it. See evidence for what the identification rests on.", Dwc + "basisOfRecord"),
            new("occurrenceStatus", ExportKind.Text, "present, or absent: looked for and not found.", Dwc + "occurrenceStatus"),
            new("taxonID", ExportKind.Text, "Identifier of the taxon in the taxon list.", Dwc + "taxonID"),
            new("scientificName", ExportKind.Text, "Scientific name without authorship.", Dwc + "scientificName"),
            new("taxonRank", ExportKind.Text, "Rank of the taxon.", Dwc + "taxonRank", Required: false),
            new("eventDate", ExportKind.Text, "Day, or first and last possible day with a stroke between (ISO 8601).", Dwc + "eventDate"),
            new("gridReference", ExportKind.Text, "Grid reference of the finest square that the record supports."),
            new("gridSystem", ExportKind.Text, "National grid of the reference."),
            new("decimalLatitude", ExportKind.Number, "Degrees north (WGS84): as sent, else of the middle of the square.", Dwc + "decimalLatitude"),
            new("decimalLongitude", ExportKind.Number, "Degrees east (WGS84): as sent, else of the middle of the square.", Dwc + "decimalLongitude"),
            new("geodeticDatum", ExportKind.Text, "Datum of latitude and longitude, always EPSG:4326.", Dwc + "geodeticDatum"),
            new("coordinateUncertaintyInMeters", ExportKind.Number, "Radius of the circle that holds the place, metres: as sent, else half the diagonal of the square.", Dwc + "coordinateUncertaintyInMeters"),
            new("identificationVerificationStatus", ExportKind.Text, "Where the review stands: confirmed, doubtful or unreviewed.", Dwc + "identificationVerificationStatus"),
            new("recordedBy", ExportKind.Text, "Who saw it; empty for those without the right to see people's names.", Dwc + "recordedBy", Required: false),
            new("identifiedBy", ExportKind.Text, "Who named it; as recordedBy.", Dwc + "identifiedBy", Required: false),
            new("lifeStage", ExportKind.Text, "Life stage or caste.", Dwc + "lifeStage", Required: false),
            new("sex", ExportKind.Text, "Sex.", Dwc + "sex", Required: false),
            new("individualCount", ExportKind.Whole, "Number of individuals.", Dwc + "individualCount", Required: false),
            new("lengthMm", ExportKind.Number, "Body length, millimetres.", Required: false),
            new("evidence", ExportKind.Text, "What the identification rests on.", Required: false),
            new("host", ExportKind.Text, "Plant visited, or host.", Dwc + "associatedTaxa", Required: false),
            new("behaviour", ExportKind.Text, "What it did.", Dwc + "behavior", Required: false),
            new("locality", ExportKind.Text, "Name of the site; as recordedBy.", Dwc + "locality", Required: false),
            new("completeList", ExportKind.Truth, "True where the record stands on a list of all taxa of the group that were found."),
        ],
        ["occurrenceID"]);

    /// <summary>Fronts, which are served as features and never written to files.</summary>
    public static ExportTable Fronts { get; } = new(
        "fronts", "Fronts of spreading taxa by year",
        "One feature for each spreading taxon and year: the line that the arrival model gives for the end of the year. Taxa without a model have none.",
        ExportGeometry.Lines,
        [
            new("taxonID", ExportKind.Text, "Identifier of the taxon in the taxon list.", Dwc + "taxonID"),
            new("scientificName", ExportKind.Text, "Scientific name without authorship.", Dwc + "scientificName"),
            new("size", ExportKind.Text, "Side of the squares that the model was fitted to."),
            new("year", ExportKind.Whole, "Calendar year.", Dwc + "year"),
            new("foretold", ExportKind.Truth, "True for years after the last visits."),
        ],
        ["taxonID", "size", "year"]);

    /// <summary>All that are exported.</summary>
    public static IReadOnlyList<ExportTable> All { get; } = [Presence, PresenceMap, Effort, Arrivals, Squares, Records];
}
