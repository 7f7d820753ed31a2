namespace RangeMap.Server;

// Large maps are written piece by piece and never stand whole in memory, so that no object of these shapes is ever made: they say to readers of the
// description, and to the viewer's compiler, what is written. A test holds both together.

/// <summary>A square of a map (RFC 7946).</summary>
/// <param name="Type">Always Feature.</param>
/// <param name="Id">The grid reference.</param>
/// <param name="Geometry">Its outline.</param>
/// <param name="Properties">What is said of it.</param>
internal sealed record SquareFeature<T>([property: Words("Feature")] string Type, string Id, PolygonShape Geometry, T Properties)
    where T : notnull;

/// <summary>An outline: rings of longitude and latitude on WGS84, degrees. A position is an array of two numbers.</summary>
internal sealed record PolygonShape([property: Words("Polygon")] string Type, IReadOnlyList<IReadOnlyList<double[]>> Coordinates);

/// <summary>A presence map.</summary>
/// <param name="Type">Always FeatureCollection.</param>
/// <param name="Taxon">Scientific name.</param>
/// <param name="Grid">Side of the squares.</param>
/// <param name="Quality">Which records count.</param>
/// <param name="Periods">The periods asked.</param>
/// <param name="Omitted">Records that the map leaves out.</param>
/// <param name="Edition">The state of the data.</param>
/// <param name="Features">The squares.</param>
internal sealed record PresenceShape(
    [property: Words("FeatureCollection")] string Type, string Taxon, string Grid, [property: Words("usable", "confirmed", "all")] string Quality, IReadOnlyList<string> Periods, OmittedShape Omitted, string Edition,
    IReadOnlyList<SquareFeature<PresenceSquareShape>> Features)
{
    /// <summary>The region asked for; absent where none was.</summary>
    public string Region { get; init; } = "";

    /// <summary>The box asked for; absent where none was.</summary>
    public string Within { get; init; } = "";
}

/// <summary>Records that a map leaves out.</summary>
/// <param name="TooCoarse">Known too roughly for squares of this size.</param>
/// <param name="BetweenPeriods">Wholly inside none of the periods.</param>
/// <param name="BelowQuality">Of less quality than asked for.</param>
internal sealed record OmittedShape(int TooCoarse, int BetweenPeriods, int BelowQuality);

/// <summary>A square with records.</summary>
/// <param name="Square">Its reference.</param>
/// <param name="Grid">Code of its national grid.</param>
/// <param name="First">First certain year within the periods.</param>
/// <param name="Last">Last certain year within the periods.</param>
/// <param name="Records">Records, summed over the periods.</param>
/// <param name="Period">Index of the first period with records, from 0.</param>
/// <param name="Latest">Index of the last period with records.</param>
internal sealed record PresenceSquareShape(string Square, string Grid, int First, int Last, int Records, int Period, int Latest);

/// <summary>First arrivals.</summary>
internal sealed record ArrivalsShape([property: Words("FeatureCollection")] string Type, string Taxon, string Grid, string Edition, IReadOnlyList<SquareFeature<ArrivalSquareShape>> Features);

/// <summary>When a taxon was first found in a square.</summary>
/// <param name="Square">Its reference.</param>
/// <param name="Grid">Code of its national grid.</param>
/// <param name="Year">First certain year.</param>
internal sealed record ArrivalSquareShape(string Square, string Grid, int Year);

/// <summary>Arrivals by the arrival model; empty, with the reason, where it cannot be fitted.</summary>
internal sealed record ModelledArrivalsShape(
    [property: Words("FeatureCollection")] string Type, string Taxon, string Grid, string Edition, IReadOnlyList<SquareFeature<ModelledSquareShape>> Features)
{
    /// <summary>Why there are none; absent where there are.</summary>
    public string Refused { get; init; } = "";
}

/// <summary>When a taxon reached a square, by the arrival model.</summary>
/// <param name="Square">Its reference.</param>
/// <param name="Grid">Code of its national grid.</param>
/// <param name="Year">First certain year; null where it was not found.</param>
/// <param name="Surface">Year that the smooth surface gives for the place.</param>
/// <param name="Reached">Year that is as likely too early as too late; null beyond the years told apart.</param>
/// <param name="ReachedLow">Lower end of its 95 % interval; null where open.</param>
/// <param name="ReachedHigh">Upper end.</param>
/// <param name="There">Chance that the taxon is there by the last year with visits.</param>
/// <param name="KmPerYear">Local speed; null where not measurable.</param>
/// <param name="KmPerYearLow">Lower end of its 95 % interval.</param>
/// <param name="KmPerYearHigh">Upper end.</param>
/// <param name="Bearing">Direction of spread, degrees clockwise from grid north.</param>
internal sealed record ModelledSquareShape(
    string Square, string Grid, int? Year, double Surface, int? Reached, int? ReachedLow, int? ReachedHigh, double There, double? KmPerYear, double? KmPerYearLow, double? KmPerYearHigh, double? Bearing);

/// <summary>Squares gained, lost and kept between two periods.</summary>
internal sealed record FatesShape(
    [property: Words("FeatureCollection")] string Type, string Taxon, string Grid, string From, string To, string Edition, IReadOnlyList<SquareFeature<FateShape>> Features);

/// <summary>What became of a square.</summary>
internal sealed record FateShape(string Square, string Grid, [property: Words("gained", "lost", "kept", "not-surveyed-before", "not-surveyed-after")] string Change);

/// <summary>Where recorders of a group looked in two periods.</summary>
internal sealed record EffortShape(
    [property: Words("FeatureCollection")] string Type, string? Group, string Grid, string From, string To, string Edition, IReadOnlyList<SquareFeature<EffortSquareShape>> Features);

/// <summary>Effort in a square in two periods.</summary>
/// <param name="Square">Its reference.</param>
/// <param name="Grid">Code of its national grid.</param>
/// <param name="VisitsBefore">Visits in the earlier period.</param>
/// <param name="RecordersBefore">Different recorders that are named.</param>
/// <param name="TaxaBefore">Taxa found.</param>
/// <param name="CoverageBefore">Sample coverage of the lists, 0 to 1.</param>
/// <param name="WellSurveyedBefore">True where visits and coverage reach their thresholds.</param>
/// <param name="VisitsAfter">Visits in the later period.</param>
/// <param name="RecordersAfter">Different recorders that are named.</param>
/// <param name="TaxaAfter">Taxa found.</param>
/// <param name="CoverageAfter">Sample coverage of the lists, 0 to 1.</param>
/// <param name="WellSurveyedAfter">True where visits and coverage reach their thresholds.</param>
/// <param name="Gained">Taxa found in the later period only.</param>
/// <param name="Lost">Taxa found in the earlier period only.</param>
/// <param name="Similarity">Sorensen's similarity, 0 to 1; null unless the square is well surveyed in both.</param>
/// <param name="Turnover">The part of the difference that comes of taxa in place of others; null likewise.</param>
internal sealed record EffortSquareShape(
    string Square, string Grid, int VisitsBefore, int RecordersBefore, int TaxaBefore, double CoverageBefore, bool WellSurveyedBefore,
    int VisitsAfter, int RecordersAfter, int TaxaAfter, double CoverageAfter, bool WellSurveyedAfter, int Gained, int Lost, double? Similarity, double? Turnover);

/// <summary>Chances of squares where a taxon was never found; empty, with the reason, where there is no forecast.</summary>
internal sealed record ForetoldShape(
    [property: Words("FeatureCollection")] string Type, string Taxon, string Grid, string Edition, IReadOnlyList<SquareFeature<ForetoldSquareShape>> Features)
{
    /// <summary>Last year with visits; absent where there is no forecast.</summary>
    public int Now { get; init; }

    /// <summary>The year that is foretold; absent where there is no forecast.</summary>
    public int Year { get; init; }

    /// <summary>Why there is none; absent where there is one.</summary>
    public string Refused { get; init; } = "";
}

/// <summary>The chances of a square.</summary>
/// <param name="Square">Its reference.</param>
/// <param name="Grid">Code of its national grid.</param>
/// <param name="Now">Chance that the taxon is there already.</param>
/// <param name="ByYear">Chance that it is there by the end of the year that is foretold.</param>
/// <param name="Search">Place in the list of squares to search, from 1; null where not in it.</param>
internal sealed record ForetoldSquareShape(string Square, string Grid, double Now, double ByYear, int? Search);

/// <summary>Lines of the front with the areas in which they may run; empty, with the reason, where there is no model.</summary>
internal sealed record FrontsShape([property: Words("FeatureCollection")] string Type, string Taxon, string Grid, string Edition, IReadOnlyList<FrontFeature> Features)
{
    /// <summary>Last year with visits; absent where there is no model.</summary>
    public int Now { get; init; }

    /// <summary>Why there are none; absent where there are.</summary>
    public string Refused { get; init; } = "";
}

/// <summary>The front of a year, or the band in which it lies.</summary>
internal sealed record FrontFeature([property: Words("Feature")] string Type, string Id, FrontGeometry Geometry, FrontProperties Properties);

/// <summary>Lines of a front (MultiLineString), or areas of a band (MultiPolygon); the description tells how deep the arrays of each are.</summary>
internal sealed record FrontGeometry(string Type, IReadOnlyList<object> Coordinates);

/// <summary>What is said of a front.</summary>
/// <param name="Kind">front, or band for the area in which it lies with 95 % confidence.</param>
/// <param name="Year">The year.</param>
/// <param name="Foretold">True for years after the last visits.</param>
internal sealed record FrontProperties([property: Words("front", "band")] string Kind, int Year, bool Foretold);
