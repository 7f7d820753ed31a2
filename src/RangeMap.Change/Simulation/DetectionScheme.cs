namespace RangeMap.Change;

/// <summary>How the squares of a simulated front are visited.</summary>
public enum DetectionScheme
{
    /// <summary>95 % of squares visited each year, nothing missed.</summary>
    Full,

    /// <summary>10 % of squares visited each year, half of the presences missed.</summary>
    Thin,

    /// <summary>2 % of squares visited in the first year rising evenly to 40 % in the last, half of the presences missed.</summary>
    Rising,

    /// <summary>Visits gathered round twelve places, half of the presences missed.</summary>
    Patchy,
}
