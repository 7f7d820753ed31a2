namespace RangeMap.Grids;

/// <summary>Moves latitudes and longitudes from older datums to WGS84/ETRS89 and back.</summary>
/// <remarks>
/// OSGB36 goes through OSTN15, which defines it today, by way of the National Grid; outside OSTN15's area its rim is continued. The others go through the same
/// seven-parameter shifts as their grids. Heights are taken as 0.
/// </remarks>
public static class DatumShift
{
    private static readonly RedfearnTransverseMercator AiryProjection = new(Ellipsoid.Airy, 49, -2, 0.9996012717, 400_000, -100_000);
    private static readonly ShiftedPlane Ed50 = new(Ellipsoid.International1924, DegreePlane.Instance, PublishedShifts.Ed50);
    private static readonly ShiftedPlane Tm75 = new(Ellipsoid.AiryModified, DegreePlane.Instance, PublishedShifts.Tm75);
    private static readonly ShiftedPlane Amersfoort = new(Ellipsoid.Bessel, DegreePlane.Instance, PublishedShifts.Amersfoort);

    /// <summary>A place on another datum, on WGS84.</summary>
    /// <param name="place">Degrees on <paramref name="datum"/>.</param>
    /// <param name="datum">The datum of the place.</param>
    /// <exception cref="ArgumentOutOfRangeException">The datum is none of those known.</exception>
    public static LatLon ToWgs84(LatLon place, GeodeticDatum datum) => datum switch
    {
        GeodeticDatum.Wgs84 => place,
        GeodeticDatum.Osgb36 => NationalGrid.Get(GridId.British).ToLatLon(AiryProjection.Forward(place)),
        _ => Plane(datum).ToLatLon(new(place.Longitude, place.Latitude)),
    };

    /// <summary>A place on WGS84, on another datum: the inverse of <see cref="ToWgs84"/>.</summary>
    /// <param name="place">Degrees on WGS84.</param>
    /// <param name="datum">The datum wanted.</param>
    /// <exception cref="ArgumentOutOfRangeException">The datum is none of those known.</exception>
    public static LatLon FromWgs84(LatLon place, GeodeticDatum datum)
    {
        if (datum == GeodeticDatum.Wgs84)
            return place;
        if (datum == GeodeticDatum.Osgb36)
            return AiryProjection.Inverse(NationalGrid.Get(GridId.British).FromLatLon(place));
        var found = Plane(datum).FromLatLon(place);
        return new(found.Northing, found.Easting);
    }

    /// <summary>The accuracy of the shift as published, metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The datum is none of those known.</exception>
    public static double AccuracyMetres(GeodeticDatum datum) => datum switch
    {
        GeodeticDatum.Wgs84 => 0,
        GeodeticDatum.Osgb36 => NationalGrid.Get(GridId.British).AccuracyMetres,
        GeodeticDatum.Ed50 => NationalGrid.Get(GridId.ChannelIslands).AccuracyMetres,
        GeodeticDatum.Tm75 => NationalGrid.Get(GridId.Irish).AccuracyMetres,
        GeodeticDatum.Amersfoort => NationalGrid.Get(GridId.Dutch).AccuracyMetres,
        _ => throw Unknown(datum),
    };

    private static ShiftedPlane Plane(GeodeticDatum datum) => datum switch
    {
        GeodeticDatum.Ed50 => Ed50,
        GeodeticDatum.Tm75 => Tm75,
        GeodeticDatum.Amersfoort => Amersfoort,
        _ => throw Unknown(datum),
    };

    private static ArgumentOutOfRangeException Unknown(GeodeticDatum datum) => new(nameof(datum), datum, "This datum is not known.");

    /// <summary>Latitude and longitude themselves as a plane, in degrees, so that <see cref="ShiftedPlane"/> shifts them without a projection.</summary>
    private sealed class DegreePlane : IProjection
    {
        public static readonly DegreePlane Instance = new();

        public EastNorth Forward(double latitude, double longitude) => new(longitude * Angle.DegreesPerRadian, latitude * Angle.DegreesPerRadian);

        public (double Latitude, double Longitude) Inverse(EastNorth point) => (point.Northing * Angle.RadiansPerDegree, point.Easting * Angle.RadiansPerDegree);
    }
}
