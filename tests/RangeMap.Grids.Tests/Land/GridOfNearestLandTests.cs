using CsCheck;

namespace RangeMap.Grids.Tests;

/// <summary>The grid of a place against the land itself: the coasts of gis-data and, for other countries, the points of their shores that lie nearest to our seas (foreign-shore.csv).</summary>
public sealed class GridOfNearestLandTests
{
    private const double ToleranceKm = 1;

    private static readonly Dictionary<string, GridId?> GridOfPart = new()
    {
        ["GB"] = GridId.British,
        ["IM"] = GridId.British,
        ["IE"] = GridId.Irish,
        ["NI"] = GridId.Irish,
        ["CI"] = GridId.ChannelIslands,
        ["near"] = null,
    };

    private static readonly Lazy<(GridId Grid, PolygonIndex Land)[]> OurLand = new(() =>
        [.. Ours().GroupBy(read => GridOfPart[read.Property!], read => read.Polygon).Select(group => (group.Key!.Value, new PolygonIndex(group)))]);

    // From the OpenStreetMap-derived coast and GSHHG 2.3.7: the foreign shore points whose nearest places reach up to ours, at most 300 m apart.
    private static readonly Lazy<LatLon[]> ForeignShore = new(() => [.. PublishedTable.Read("foreign-shore.csv").Select(row => new LatLon(row.Number("latitude"), row.Number("longitude")))]);

    [Fact]
    public void EveryPointOfEveryShoreGetsTheGridOfItsLand()
    {
        var points = Ours().SelectMany(read => read.Polygon.Rings.SelectMany(ring => ring.Select(place => (Grid: GridOfPart[read.Property!], Place: place)))).ToList();
        Assert.True(points.Count > 40_000, $"{points.Count}");
        Assert.DoesNotContain(points, point => NationalGrid.ForPlace(point.Place)?.Id != point.Grid);
    }

    [Fact]
    public void NoPointOfAnotherCountrysShoreGetsAGrid()
    {
        var shore = RealLand.Polygons("land.geojson", "part").Where(read => read.Property == "near").SelectMany(read => read.Polygon.Rings.SelectMany(ring => ring));
        Assert.DoesNotContain(shore.Concat(ForeignShore.Value), place => NationalGrid.ForPlace(place) is not null);
    }

    [Fact]
    public void EveryPlaceAtSeaGetsTheGridOfTheNearestLand()
    {
        var place = from latitude in Gen.Double[48.1, 62.9]
                    from longitude in Gen.Double[-13, 5.9]
                    select new LatLon(latitude, longitude);
        place.Sample(CheckNearest, iter: 20_000);
    }

    private static void CheckNearest(LatLon place)
    {
        var near = OurLand.Value.Select(land => (Grid: (GridId?)land.Grid, Km: land.Land.Contains(place) ? 0 : land.Land.NearestEdge(place).Km))
            .Append((null, ForeignShore.Value.Min(shore => Kilometres(shore, place)))).OrderBy(land => land.Item2).ToList();
        if (near[1].Km - near[0].Km < 2 * ToleranceKm) // within 1 km of the line midway
            return;
        var expected = near[0].Grid is { } own ? InLetters(own, place) ?? InLetters(GridId.British, place) : null;
        Assert.True(NationalGrid.ForPlace(place)?.Id == expected, $"{place}: {string.Join(", ", near)}");
    }

    private static GridId? InLetters(GridId id, LatLon place) => NationalGrid.Get(id).Contains(NationalGrid.Get(id).FromLatLon(place)) ? id : null;

    private static IEnumerable<(string? Property, GeoPolygon Polygon)> Ours() =>
        RealLand.Polygons("land.geojson", "part").Concat(RealLand.Polygons("islets.geojson", "part")).Where(read => read.Property != "near");

    /// <summary>On a sphere, by the spherical law of cosines: enough for distances of kilometres compared to one.</summary>
    private static double Kilometres(LatLon a, LatLon b)
    {
        double north = a.Latitude * Math.PI / 180, other = b.Latitude * Math.PI / 180, east = (a.Longitude - b.Longitude) * Math.PI / 180;
        return 6371.009 * Math.Acos(Math.Min(1, Math.Sin(north) * Math.Sin(other) + Math.Cos(north) * Math.Cos(other) * Math.Cos(east)));
    }
}
