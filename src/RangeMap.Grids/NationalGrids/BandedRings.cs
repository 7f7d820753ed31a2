namespace RangeMap.Grids;

/// <summary>Closed rings in latitude and longitude, sorted into bands of latitude, so that whether a place lies in them is told from the few edges at its own latitude.</summary>
internal sealed class BandedRings
{
    private const double BandsPerDegree = 10;
    private readonly double _south, _north, _west, _east;
    private readonly Edge[][] _bands;

    /// <summary>Makes the area within rings (even-odd rule); edges are straight in degrees.</summary>
    public BandedRings(IReadOnlyList<LatLon[]> rings)
    {
        var edges = rings.SelectMany(ring => ring.Zip(ring.Skip(1))).Where(pair => pair.First.Latitude != pair.Second.Latitude).Select(pair => Edge.Between(pair.First, pair.Second)).ToList();
        _south = edges.Min(edge => edge.South);
        _north = edges.Max(edge => edge.North);
        _west = rings.Min(ring => ring.Min(place => place.Longitude));
        _east = rings.Max(ring => ring.Max(place => place.Longitude));
        _bands = new Edge[BandOf(_north) + 1][];
        for (var band = 0; band < _bands.Length; band++)
            _bands[band] = [.. edges.Where(edge => BandOf(edge.South) <= band && BandOf(edge.North) >= band)];
    }

    /// <summary>True when the place lies within the rings.</summary>
    public bool Contain(LatLon place)
    {
        if (!(place.Latitude >= _south && place.Latitude < _north && place.Longitude >= _west && place.Longitude <= _east))
            return false;
        var inside = false;
        foreach (var edge in _bands[BandOf(place.Latitude)])
            inside ^= place.Latitude >= edge.South && place.Latitude < edge.North && place.Longitude < edge.LongitudeAtSouth + (place.Latitude - edge.South) * edge.LongitudePerLatitude;
        return inside;
    }

    private int BandOf(double latitude) => (int)((latitude - _south) * BandsPerDegree);

    private readonly record struct Edge(double South, double North, double LongitudeAtSouth, double LongitudePerLatitude)
    {
        public static Edge Between(LatLon a, LatLon b)
        {
            var (south, north) = a.Latitude < b.Latitude ? (a, b) : (b, a);
            return new(south.Latitude, north.Latitude, south.Longitude, (north.Longitude - south.Longitude) / (north.Latitude - south.Latitude));
        }
    }
}
