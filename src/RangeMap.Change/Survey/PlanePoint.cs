namespace RangeMap.Change;

/// <summary>A place on the one plane that a computation uses: a national grid, or an equal-area projection where several grids meet.</summary>
/// <param name="X">Kilometres east.</param>
/// <param name="Y">Kilometres north.</param>
public readonly record struct PlanePoint(double X, double Y)
{
    /// <summary>Kilometres between two places of one plane.</summary>
    public static double Km(PlanePoint a, PlanePoint b)
    {
        double east = a.X - b.X, north = a.Y - b.Y;
        return Math.Sqrt(east * east + north * north);
    }
}
