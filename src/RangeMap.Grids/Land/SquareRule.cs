namespace RangeMap.Grids;

/// <summary>When a square counts as lying in a polygon.</summary>
public enum SquareRule
{
    /// <summary>Any part of the polygon lies in the square.</summary>
    Touches,

    /// <summary>The middle of the square lies in the polygon.</summary>
    Centre,

    /// <summary>More than half of the square lies in the polygon.</summary>
    Most,
}
