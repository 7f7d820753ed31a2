using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>A part of a plane laid on a box of the paper: the main map or an inset.</summary>
/// <param name="Plane">The plane; north on it is up.</param>
/// <param name="Bounds">The part that is shown, metres.</param>
/// <param name="Box">Where, of the same proportions.</param>
/// <param name="Name">What an inset shows; null for the main map.</param>
internal sealed record MapFrame(INationalGrid Plane, PlaneBounds Bounds, PaperBox Box, string? Name)
{
    /// <summary>Millimetres on paper to a metre on the plane.</summary>
    public double MmPerMetre => Box.Width / Bounds.Width();

    /// <summary>True when the letters of a grid are shown: those of its own, and on the larger islands those of both, as each has its own part of the land.</summary>
    public bool IsLettered(GridId grid) => grid == Plane.Id || (IsOfLargerIslands(grid) && IsOfLargerIslands(Plane.Id));

    /// <summary>A point of the plane on the paper; it may lie outside the box.</summary>
    public PaperPoint On(EastNorth point) => new(Box.Left + (point.Easting - Bounds.West) * MmPerMetre, Box.Top + (Bounds.North - point.Northing) * MmPerMetre);

    /// <summary>Points of the plane on the paper.</summary>
    public PaperPoint[] On(ReadOnlySpan<EastNorth> points)
    {
        var drawn = new PaperPoint[points.Length];
        for (var i = 0; i < points.Length; i++)
            drawn[i] = On(points[i]);
        return drawn;
    }

    private static bool IsOfLargerIslands(GridId grid) => grid is GridId.British or GridId.Irish;

    /// <summary>True when the middle of the square lies in the part that is shown.</summary>
    public bool Shows(Square square)
    {
        var own = NationalGrid.Get(square.Grid);
        return Bounds.Contains(own.Id == Plane.Id ? square.Centre : Plane.FromLatLon(own.ToLatLon(square.Centre)));
    }
}
