namespace RangeMap.Grids;

/// <summary>A position on the plane of a national grid.</summary>
/// <param name="Easting">Metres east of the grid's false origin.</param>
/// <param name="Northing">Metres north of the grid's false origin.</param>
public readonly record struct EastNorth(double Easting, double Northing);
