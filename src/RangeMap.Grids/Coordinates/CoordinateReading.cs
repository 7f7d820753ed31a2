namespace RangeMap.Grids;

/// <summary>A latitude and longitude as a person wrote them.</summary>
/// <param name="Position">The place.</param>
/// <param name="UnitDegrees">The unit of the last figure, degrees, of the finer of the two numbers: 0.01 for two decimals, 1/60 for whole minutes.</param>
/// <param name="Decimals">The count of decimals of the degrees, of the finer of the two numbers; null when minutes were given.</param>
public readonly record struct CoordinateReading(LatLon Position, double UnitDegrees, int? Decimals)
{
    /// <summary>The uncertainty to assume where none is stated, metres; see <see cref="CoordinatePrecision"/>.</summary>
    public double AssumedRadiusMetres => CoordinatePrecision.RadiusMetresOfUnit(UnitDegrees, Position.Latitude);
}
