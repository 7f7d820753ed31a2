namespace RangeMap.Change;

/// <summary>The names of the measures of change, as machine output gives them.</summary>
public static class ChangeMethods
{
    /// <summary>Occupied squares, whatever the effort; percent.</summary>
    public const string Squares = "squares";

    /// <summary>Occupied squares among those surveyed in both periods; percent.</summary>
    public const string SquaresBoth = "squares-both";

    /// <summary>Occupied squares among those well surveyed in both periods; percent.</summary>
    public const string SquaresSurveyed = "squares-surveyed";

    /// <summary>Standardised residual of the logit regression of two periods over a group; standard deviations.</summary>
    public const string RelativeIndex = "relative-index";

    /// <summary>Ratio of the time factors of neighbourhood frequency scaling; percent.</summary>
    public const string NeighbourhoodFrequency = "neighbourhood-frequency";

    /// <summary>Slope on year of the list-length logistic; logits per decade.</summary>
    public const string ListLength = "list-length";

    /// <summary>Share of visits with the taxon; percentage points.</summary>
    public const string ReportingRate = "reporting-rate";

    /// <summary>Share of squares occupied, corrected for detection; percentage points.</summary>
    public const string Occupancy = "occupancy";

    /// <summary>Extent of occurrence; percent.</summary>
    public const string Extent = "extent";

    /// <summary>Extent by alpha-hull; percent. Asked for by itself.</summary>
    public const string ExtentAlpha = "extent-alpha";

    /// <summary>Area of occupancy at 2 km; percent.</summary>
    public const string OccupancyArea = "occupancy-area";

    /// <summary>Shift of the middle of the range; km.</summary>
    public const string Centroid = "centroid";

    /// <summary>Shift of the northern margin; km, outwards positive.</summary>
    public const string MarginNorth = "margin-north";

    /// <summary>Shift of the southern margin; km, outwards positive.</summary>
    public const string MarginSouth = "margin-south";

    /// <summary>Shift of the eastern margin; km, outwards positive.</summary>
    public const string MarginEast = "margin-east";

    /// <summary>Shift of the western margin; km, outwards positive.</summary>
    public const string MarginWest = "margin-west";

    /// <summary>Shift of the gamma-quantile margin; km, outwards positive.</summary>
    public const string MarginGamma = "margin-gamma";
}
