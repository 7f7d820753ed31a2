namespace RangeMap.Grids;

/// <summary>
/// Universal Transverse Mercator on WGS84, one hemisphere with all its zones side by side: eastings carry the number of the zone in front
/// (EPSG:32600 and 32700, EPSG method 9824), so E 30,565,145 is E 565,145 of zone 30. Squares have their names in the military grid (MGRS).
/// </summary>
/// <remarks>
/// Area: in each zone eastings [100 km, 900 km); northings [0, 9400 km) in the north, [1100 km, 10,000 km) in the south: 80 S to 84 N, no polar grids.
/// A square at the edge of its zone reaches over it whole; the military grid would cut it off there.
/// </remarks>
internal sealed class UtmGrid(bool north) : INationalGrid
{
    /// <summary>The width that each zone has on the plane, metres; a multiple of every square size.</summary>
    public const int ZoneWidth = 1_000_000;

    private const double SouthernFalseNorthing = 10_000_000;

    // Longitudes are counted from the central meridian of each zone.
    private static readonly KruegerTransverseMercator Projection = new(Ellipsoid.Wgs84, 0, 0, 0.9996, 500_000, 0);
    private readonly double _falseNorthing = north ? 0 : SouthernFalseNorthing;
    private readonly PlaneBounds _zoneArea = north ? new(100_000, 0, 900_000, 9_400_000) : new(100_000, 1_100_000, 900_000, 10_000_000);

    /// <inheritdoc/>
    public GridId Id => north ? GridId.UtmNorth : GridId.UtmSouth;

    /// <inheritdoc/>
    public string Code => north ? "UTM-N" : "UTM-S";

    /// <inheritdoc/>
    public string Name => north ? "UTM, northern hemisphere (MGRS)" : "UTM, southern hemisphere (MGRS)";

    /// <inheritdoc/>
    public int Epsg => north ? 32600 : 32700;

    /// <summary>0.001 m: there is no datum shift.</summary>
    public double AccuracyMetres => 0.001;

    /// <summary>True where UTM is used: 80 S (inside) to 84 N (outside), any longitude.</summary>
    public static bool Covers(LatLon place) => place is { Latitude: >= -80 and < 84, Longitude: >= -180 and <= 180 };

    /// <summary>The northing, metres, at a latitude and so many degrees of longitude from the central meridian.</summary>
    public static double NorthingOf(double latitude, double offset, bool north) =>
        Projection.Forward(latitude * Angle.RadiansPerDegree, offset * Angle.RadiansPerDegree).Northing + (north ? 0 : SouthernFalseNorthing);

    /// <inheritdoc/>
    public bool Contains(EastNorth point)
    {
        var zone = Math.Floor(point.Easting / ZoneWidth);
        return zone is >= 1 and <= UtmZone.Count && _zoneArea.Contains(new(point.Easting - zone * ZoneWidth, point.Northing));
    }

    /// <inheritdoc/>
    public EastNorth FromLatLon(LatLon point)
    {
        var zone = UtmZone.Of(point);
        var found = Projection.Forward(point.Latitude * Angle.RadiansPerDegree, (point.Longitude - UtmZone.CentralMeridian(zone)) * Angle.RadiansPerDegree);
        return new(zone * (double)ZoneWidth + found.Easting, found.Northing + _falseNorthing);
    }

    /// <summary>The place of a point. Longitudes run on past 180 degrees in zones 1 and 60, so that the outlines of squares there stay whole.</summary>
    public LatLon ToLatLon(EastNorth point)
    {
        var zone = (int)Math.Clamp(Math.Floor(point.Easting / ZoneWidth), 1, UtmZone.Count);
        var (latitude, longitude) = Projection.Inverse(new(point.Easting - zone * (double)ZoneWidth, point.Northing - _falseNorthing));
        return new(latitude * Angle.DegreesPerRadian, longitude * Angle.DegreesPerRadian + UtmZone.CentralMeridian(zone));
    }

    /// <inheritdoc/>
    public string? Letters(EastNorth point)
    {
        if (!Contains(point))
            return null;
        var middle = Square.At(Id, SquareSize.Km100, point).Centre;
        return MgrsLetters.At((int)(point.Easting / ZoneWidth), (int)(point.Easting % ZoneWidth), (int)point.Northing, ToLatLon(middle).Latitude, north);
    }
}
