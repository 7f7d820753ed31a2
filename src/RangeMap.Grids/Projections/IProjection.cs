namespace RangeMap.Grids;

/// <summary>A map projection of one ellipsoid, without any datum shift.</summary>
internal interface IProjection
{
    /// <summary>Geodetic radians to the plane, metres.</summary>
    EastNorth Forward(double latitude, double longitude);

    /// <summary>The plane to geodetic radians.</summary>
    (double Latitude, double Longitude) Inverse(EastNorth point);
}
