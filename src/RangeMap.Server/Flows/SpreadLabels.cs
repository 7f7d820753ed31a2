using RangeMap.Change;

namespace RangeMap.Server;

/// <summary>What the estimators are called for people; a speed of the margin and one of the whole never share a label.</summary>
internal static class SpreadLabels
{
    public static string Of(string method) => method switch
    {
        SpreadMethods.FrontQuantile => "Front speed",
        SpreadMethods.IntervalCensored => "Arrival years with visits that found nothing",
        SpreadMethods.ArrivalModel => "Arrival model with visits",
        SpreadMethods.AllPoints => "Average of first records",
        SpreadMethods.RootArea => "Area equivalent",
        SpreadMethods.Sectors => "Boundary, mean of sectors",
        SpreadMethods.Maximum => "Farthest square",
        SpreadMethods.GammaMargin => "Margin by all squares",
        _ => method,
    };

    /// <summary>What a front does during a phase.</summary>
    public static string Of(FrontMovement movement) => movement switch
    {
        FrontMovement.Advances => "advances",
        FrontMovement.DrawsBack => "draws back",
        _ => "stands still",
    };
}
