namespace RangeMap.Change;

/// <summary>
/// A square as geometry sees it. Its corners are kept one by one, because a square of one national grid stands askew on the plane of
/// another and on an equal-area plane.
/// </summary>
/// <param name="SouthWest">The corner that names it.</param>
/// <param name="SouthEast">The next corner, anticlockwise.</param>
/// <param name="NorthEast">The next.</param>
/// <param name="NorthWest">The last.</param>
public readonly record struct SurveySquare(PlanePoint SouthWest, PlanePoint SouthEast, PlanePoint NorthEast, PlanePoint NorthWest)
{
    /// <summary>The middle of the four corners.</summary>
    public PlanePoint Centre => new((SouthWest.X + SouthEast.X + NorthEast.X + NorthWest.X) / 4, (SouthWest.Y + SouthEast.Y + NorthEast.Y + NorthWest.Y) / 4);

    /// <summary>Square kilometres on the plane; not negative.</summary>
    public double AreaKm2 => Math.Abs(Cross(SouthWest, NorthEast, SouthEast, NorthWest)) / 2;

    /// <summary>A square that stands upright on the plane of its own grid.</summary>
    /// <param name="x">Kilometres east of its south-west corner.</param>
    /// <param name="y">Kilometres north of its south-west corner.</param>
    /// <param name="sideKm">Its side, km, more than 0.</param>
    public static SurveySquare Upright(double x, double y, double sideKm) =>
        new(new(x, y), new(x + sideKm, y), new(x + sideKm, y + sideKm), new(x, y + sideKm));

    // Half the cross product of the diagonals is the area of any simple quadrilateral.
    private static double Cross(PlanePoint fromA, PlanePoint toA, PlanePoint fromB, PlanePoint toB) =>
        (toA.X - fromA.X) * (toB.Y - fromB.Y) - (toA.Y - fromA.Y) * (toB.X - fromB.X);
}
