namespace RangeMap.Change;

/// <summary>The names of the estimators, as machine output gives them.</summary>
public static class SpreadMethods
{
    /// <summary>95 % quantile regression of distance on year of first record; the speed to quote.</summary>
    public const string FrontQuantile = "front-quantile";

    /// <summary>Least squares of distance on year of first record.</summary>
    public const string AllPoints = "all-points";

    /// <summary>Growth of the radius of a disc (or part of one) of the occupied area.</summary>
    public const string RootArea = "root-area";

    /// <summary>Mean displacement of the boundary over bearing sectors.</summary>
    public const string Sectors = "sectors";

    /// <summary>Growth of the farthest distance reached so far.</summary>
    public const string Maximum = "maximum";
}
