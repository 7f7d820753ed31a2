namespace RangeMap.Change;

/// <summary>One visit to a square that could have found the species.</summary>
/// <param name="X">Kilometres east of the centre of the square, on the plane of the arrival points.</param>
/// <param name="Y">Kilometres north of the centre of the square.</param>
/// <param name="Time">The year, or the time in the unit of the arrival points.</param>
/// <param name="Found">True where the visit found the species.</param>
public readonly record struct SquareVisit(double X, double Y, double Time, bool Found);
