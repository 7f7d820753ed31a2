namespace RangeMap.Records;

/// <summary>
/// What a column can mean. The names are those of Darwin Core (https://dwc.tdwg.org/terms/) where it has one; startDate,
/// endDate, gridReference, gridSystem, caste, lengthMm, completeList, evidence, evidenceLink, host and behaviour are ours; the names of Darwin Core
/// that come close to the last four (basisOfRecord, associatedMedia, associatedTaxa, behavior) are read as plain names, and so are those of its
/// Humboldt Extension (http://rs.tdwg.org/eco/terms/) that say that a list is complete.
/// </summary>
public enum Term
{
    /// <summary>Identity of the record within its data set, kept from one import to the next.</summary>
    OccurrenceId,

    /// <summary>Identifier in the taxon list.</summary>
    TaxonId,

    /// <summary>The name as identified, with or without authorship.</summary>
    ScientificName,

    /// <summary>The everyday name.</summary>
    VernacularName,

    /// <summary>A word of doubt such as cf. or a question mark.</summary>
    IdentificationQualifier,

    /// <summary>Day, month, year or interval.</summary>
    EventDate,

    /// <summary>First day, month or year of a span given in two columns.</summary>
    StartDate,

    /// <summary>Last day, month or year of a span given in two columns.</summary>
    EndDate,

    /// <summary>Year, where the date comes in parts.</summary>
    Year,

    /// <summary>Month 1 to 12 or its English name, where the date comes in parts.</summary>
    Month,

    /// <summary>Day of the month, where the date comes in parts.</summary>
    Day,

    /// <summary>National grid reference.</summary>
    GridReference,

    /// <summary>Degrees north.</summary>
    DecimalLatitude,

    /// <summary>Degrees east.</summary>
    DecimalLongitude,

    /// <summary>Radius of the circle that holds the place, metres.</summary>
    CoordinateUncertaintyInMeters,

    /// <summary>Datum of latitude and longitude.</summary>
    GeodeticDatum,

    /// <summary>Who saw it.</summary>
    RecordedBy,

    /// <summary>Who named it.</summary>
    IdentifiedBy,

    /// <summary>Life stage.</summary>
    LifeStage,

    /// <summary>Caste of a social insect; says more than the life stage where both are given.</summary>
    Caste,

    /// <summary>Sex.</summary>
    Sex,

    /// <summary>Number of individuals.</summary>
    IndividualCount,

    /// <summary>Whether the taxon was found, or looked for and not found.</summary>
    OccurrenceStatus,

    /// <summary>Where the review of the record stands.</summary>
    IdentificationVerificationStatus,

    /// <summary>Name of the site.</summary>
    Locality,

    /// <summary>Remarks.</summary>
    OccurrenceRemarks,

    /// <summary>Body length; millimetres where no unit is written.</summary>
    LengthMm,

    /// <summary>What the record rests on: specimen, photograph, sighting and so on.</summary>
    Evidence,

    /// <summary>Where the evidence can be seen.</summary>
    EvidenceLink,

    /// <summary>Plant visited, or host.</summary>
    Host,

    /// <summary>What it did.</summary>
    Behaviour,

    /// <summary>Country, which tells the grid of eastings and northings without letters.</summary>
    CountryCode,

    /// <summary>The grid that references are on.</summary>
    GridSystem,

    /// <summary>Whether the visit's list has all taxa of the group that were found.</summary>
    CompleteList,

    /// <summary>How was looked; tells a complete list where it names one.</summary>
    SamplingProtocol,
}
