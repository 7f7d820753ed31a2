using RangeMap.Grids;

namespace RangeMap.Change;

/// <summary>A 10 km square with land in it, as the simulated world is told of it.</summary>
/// <param name="Grid">The national grid of the square; places are invented in its eastings and northings.</param>
/// <param name="Easting">Metres, of the south-west corner on that grid.</param>
/// <param name="Northing">Metres, of the south-west corner on that grid.</param>
/// <param name="X">Kilometres east of the centre on the one plane that distances are measured on.</param>
/// <param name="Y">Kilometres north of the centre on that plane.</param>
public readonly record struct LandCell(GridId Grid, int Easting, int Northing, double X, double Y)
{
    /// <summary>Side of a cell, metres.</summary>
    public const int SideMetres = 10_000;

    /// <summary>A square of the British grid, whose own plane is the plane of distances.</summary>
    public static LandCell British(int easting, int northing) =>
        new(GridId.British, easting, northing, (easting + SideMetres / 2) / 1000.0, (northing + SideMetres / 2) / 1000.0);

    /// <summary>Kilometres between the centres of two cells.</summary>
    public double DistanceKm(LandCell other) => Math.Sqrt(SquaredKm(other.X, other.Y));

    /// <summary>Square of the kilometres from the centre to a point of the plane.</summary>
    public double SquaredKm(double x, double y) => (X - x) * (X - x) + (Y - y) * (Y - y);
}
