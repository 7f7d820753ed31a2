namespace RangeMap.Grids;

/// <summary>A position on WGS84/ETRS89, which RangeMap treats as one datum (they differ by about 0.9 m, see docs/methods/grids.md).</summary>
/// <param name="Latitude">Degrees north, -90 to 90.</param>
/// <param name="Longitude">Degrees east, -180 to 180.</param>
public readonly record struct LatLon(double Latitude, double Longitude);
