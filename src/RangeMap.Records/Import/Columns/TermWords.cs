namespace RangeMap.Records;

/// <summary>What each term means, in a few words for the person who says which column is which.</summary>
public static class TermWords
{
    private static readonly Dictionary<Term, string> Words = new()
    {
        [Term.OccurrenceId] = "The record's own identifier; a corrected row is known by it again.",
        [Term.TaxonId] = "Identifier in the taxon list.",
        [Term.ScientificName] = "The name as identified.",
        [Term.VernacularName] = "The everyday name.",
        [Term.IdentificationQualifier] = "A word of doubt such as cf. or a question mark.",
        [Term.EventDate] = "Day, month, year or span of dates.",
        [Term.StartDate] = "First day of a span given in two columns.",
        [Term.EndDate] = "Last day of a span given in two columns.",
        [Term.Year] = "Year, where the date comes in parts.",
        [Term.Month] = "Month, where the date comes in parts.",
        [Term.Day] = "Day of the month, where the date comes in parts.",
        [Term.GridReference] = "National grid reference, such as NZ2563.",
        [Term.DecimalLatitude] = "Degrees north.",
        [Term.DecimalLongitude] = "Degrees east.",
        [Term.CoordinateUncertaintyInMeters] = "Radius in metres of the circle that holds the place.",
        [Term.GeodeticDatum] = "Datum of latitude and longitude, such as WGS84 or OSGB36.",
        [Term.RecordedBy] = "Who saw it.",
        [Term.IdentifiedBy] = "Who named it.",
        [Term.LifeStage] = "Life stage, such as larva or adult.",
        [Term.Caste] = "Caste of a social insect: queen, worker or male.",
        [Term.Sex] = "Female or male.",
        [Term.IndividualCount] = "How many; 0 means looked for and not found.",
        [Term.OccurrenceStatus] = "Present, or absent: looked for and not found.",
        [Term.IdentificationVerificationStatus] = "Where the review of the record stands.",
        [Term.Locality] = "Name of the site.",
        [Term.OccurrenceRemarks] = "Remarks.",
        [Term.LengthMm] = "Body length in millimetres.",
        [Term.Evidence] = "What the identification rests on: specimen, photograph, sighting.",
        [Term.EvidenceLink] = "Web address of a photograph or other evidence.",
        [Term.Host] = "Plant visited, or host.",
        [Term.Behaviour] = "What it did.",
        [Term.CountryCode] = "Country, which tells the grid of eastings and northings without letters.",
        [Term.GridSystem] = "The grid of the references, such as GB, IE, ITM or EPSG:27700.",
        [Term.CompleteList] = "Yes where the visit's list has all taxa of the group that were found.",
        [Term.SamplingProtocol] = "How was looked; \"complete list\" makes the list one.",
    };

    /// <summary>The words for a term.</summary>
    public static string Of(Term term) => Words.GetValueOrDefault(term, TermNames.Name(term));
}
