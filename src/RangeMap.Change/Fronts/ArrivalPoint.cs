namespace RangeMap.Change;

/// <summary>When a square was first found occupied: its earliest accepted record.</summary>
/// <param name="X">Kilometres east of the grid's false origin, of the centre of the square. All points on one plane.</param>
/// <param name="Y">Kilometres north of the grid's false origin, of the centre of the square.</param>
/// <param name="Time">The year, or the time in another unit named in <see cref="SpreadOptions.TimeUnit"/>.</param>
public readonly record struct ArrivalPoint(double X, double Y, double Time);

/// <summary>The same where only the distance from the origin is known.</summary>
/// <param name="DistanceKm">Kilometres from the origin, not negative.</param>
/// <param name="Time">The year, or the time in another unit named in <see cref="SpreadOptions.TimeUnit"/>.</param>
public readonly record struct ArrivalDistance(double DistanceKm, double Time);
