namespace RangeMap.Grids;

/// <summary>A position in space on one datum, metres from the centre of its ellipsoid.</summary>
/// <param name="X">Towards latitude 0, longitude 0.</param>
/// <param name="Y">Towards latitude 0, longitude 90 east.</param>
/// <param name="Z">Towards the north pole.</param>
internal readonly record struct Geocentric(double X, double Y, double Z);
