namespace RangeMap.Change;

/// <summary>The names of the estimators, as machine output gives them.</summary>
public static class SpreadMethods
{
    /// <summary>95 % quantile regression of distance on year of first record; the speed to quote.</summary>
    public const string FrontQuantile = "front-quantile";

    /// <summary>Regression of the year of arrival on distance, arrivals known as intervals between visits.</summary>
    public const string IntervalCensored = "interval-censored";

    /// <summary>The smooth arrival surface with the chance of a find estimated too; listed only where a fitted model is given.</summary>
    public const string ArrivalModel = "arrival-model";

    /// <summary>Least squares of distance on year of first record.</summary>
    public const string AllPoints = "all-points";

    /// <summary>Growth of the radius of a disc (or part of one) of the occupied area.</summary>
    public const string RootArea = "root-area";

    /// <summary>Mean displacement of the boundary over bearing sectors.</summary>
    public const string Sectors = "sectors";

    /// <summary>Growth of the farthest distance reached so far.</summary>
    public const string Maximum = "maximum";

    /// <summary>Displacement of the gamma margin of the squares found in each of several windows of years, recording levelled by visits.</summary>
    public const string GammaMargin = "gamma-margin";
}
