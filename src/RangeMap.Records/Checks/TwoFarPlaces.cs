using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>
/// A recorder in two places far apart on one day: each record is compared with the first of that recorder and day, between the nearest
/// edges of their squares.
/// </summary>
internal sealed class TwoFarPlaces(double farKm)
{
    private readonly FirstSquares _firstSquares = new();
    private (int Recorder, DateOnly Day, long Square) _last;
    private Doubts _lastFound;

    /// <summary>Remembers the place of a visit; in doubt when it is far from the first of that day.</summary>
    public Doubts Add(int recorder, DateOnly day, long square)
    {
        // The rows of a visit mostly stand together.
        if (_last == (recorder, day, square))
            return _lastFound;
        _last = (recorder, day, square);
        var hash = MixedHash.Of((ulong)recorder, (ulong)day.DayNumber);
        var first = _firstSquares.GetOrAdd(hash, square);
        var isFar = first != square && KmApart(Square.FromCode(first), Square.FromCode(square)) > farKm;
        return _lastFound = isFar ? Doubts.TwoFarPlaces : Doubts.None;
    }

    /// <summary>Kilometres between the nearest edges of two squares of one grid, or about as much for squares of two grids.</summary>
    internal static double KmApart(Square a, Square b)
    {
        if (a.Grid != b.Grid)
            return Math.Max(0, KmBetween(Centre(a), Centre(b)) - (a.SideMetres + b.SideMetres) / 2000.0);
        var east = Gap(a.Easting, a.SideMetres, b.Easting, b.SideMetres);
        var north = Gap(a.Northing, a.SideMetres, b.Northing, b.SideMetres);
        return Math.Sqrt(east * east + north * north) / 1000;
    }

    private static double Gap(double a, double sideOfA, double b, double sideOfB) => Math.Max(0, Math.Max(b - a - sideOfA, a - b - sideOfB));

    private static LatLon Centre(Square square) =>
        NationalGrid.Get(square.Grid).ToLatLon(new(square.Easting + square.SideMetres / 2.0, square.Northing + square.SideMetres / 2.0));

    /// <summary>Great-circle distance on a sphere of 6,371 km, by the haversine formula; within 0.6 % of the ellipsoid's.</summary>
    private static double KmBetween(LatLon a, LatLon b)
    {
        const double radians = Math.PI / 180;
        var north = Math.Sin((b.Latitude - a.Latitude) * radians / 2);
        var east = Math.Sin((b.Longitude - a.Longitude) * radians / 2);
        var h = north * north + Math.Cos(a.Latitude * radians) * Math.Cos(b.Latitude * radians) * east * east;
        return 2 * 6371 * Math.Asin(Math.Sqrt(Math.Min(1, h)));
    }
}
