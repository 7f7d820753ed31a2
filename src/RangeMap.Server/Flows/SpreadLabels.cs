using RangeMap.Change;

namespace RangeMap.Server;

/// <summary>What the estimators are called for people; a speed of the margin and one of the whole never share a label.</summary>
internal static class SpreadLabels
{
    public static string Of(string method) => method switch
    {
        SpreadMethods.FrontQuantile => "Front speed",
        SpreadMethods.AllPoints => "Average of first records",
        SpreadMethods.RootArea => "Area equivalent",
        SpreadMethods.Sectors => "Boundary, mean of sectors",
        SpreadMethods.Maximum => "Farthest square",
        _ => method,
    };
}
