namespace RangeMap.Grids;

/// <summary>A projected plane in metres, with the way to and from latitude/longitude.</summary>
public interface IPlane
{
    /// <summary>EPSG code of the plane.</summary>
    int Epsg { get; }

    /// <summary>Latitude/longitude to the plane, in metres. Defined also somewhat outside the area of use, with less accuracy there.</summary>
    EastNorth FromLatLon(LatLon point);

    /// <summary>The plane to latitude/longitude, in degrees; the inverse of <see cref="FromLatLon"/>.</summary>
    LatLon ToLatLon(EastNorth point);
}
