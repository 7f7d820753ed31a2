namespace RangeMap.Grids;

/// <summary>A position on a projected plane: that of a national grid, or of a map (see <see cref="IPlane"/>).</summary>
/// <param name="Easting">Metres east of the plane's (false) origin.</param>
/// <param name="Northing">Metres north of the plane's (false) origin.</param>
public readonly record struct EastNorth(double Easting, double Northing);
