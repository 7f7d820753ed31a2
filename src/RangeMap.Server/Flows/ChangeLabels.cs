using RangeMap.Change;

namespace RangeMap.Server;

/// <summary>What the measures of change are called for people, and whether they allow for effort.</summary>
internal static class ChangeLabels
{
    public static string Of(string method) => method switch
    {
        ChangeMethods.Squares => "Squares, all",
        ChangeMethods.SquaresBoth => "Squares surveyed in both periods",
        ChangeMethods.SquaresSurveyed => "Squares well surveyed in both periods",
        ChangeMethods.RelativeIndex => "Against the group's other species",
        ChangeMethods.NeighbourhoodFrequency => "Frequency among neighbours",
        ChangeMethods.ListLength => "Chance of being on a list",
        ChangeMethods.ReportingRate => "Share of visits",
        ChangeMethods.Occupancy => "Occupancy with detection",
        ChangeMethods.Extent => "Extent of occurrence",
        ChangeMethods.ExtentAlpha => "Extent without gaps (alpha-hull)",
        ChangeMethods.OccupancyArea => "Area of occupancy, 2 km",
        ChangeMethods.Centroid => "Middle of the range",
        ChangeMethods.MarginNorth => "Northern margin",
        ChangeMethods.MarginSouth => "Southern margin",
        ChangeMethods.MarginEast => "Eastern margin",
        ChangeMethods.MarginWest => "Western margin",
        ChangeMethods.MarginGamma => "Northern margin by all squares",
        _ => method,
    };
}
