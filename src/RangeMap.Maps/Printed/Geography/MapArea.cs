using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Which part of the world a printed map shows.</summary>
/// <param name="Plane">The plane that it is drawn on: squares of this grid stand upright.</param>
/// <param name="Bounds">The part of the plane, metres.</param>
/// <param name="Insets">Islands that lie outside it and are shown beside it.</param>
/// <param name="Region">The name of a region that the map is of; null for all.</param>
/// <param name="Outline">The region's outline; empty for all.</param>
public sealed record MapArea(INationalGrid Plane, PlaneBounds Bounds, IReadOnlyList<MapInset> Insets, string? Region, IReadOnlyList<GeoPolygon> Outline)
{
    private const double Margin = 0.04;

    /// <summary>A map of less than this, metres, shows nothing that tells where it is.</summary>
    private const double LeastSide = 20_000;

    /// <summary>A plane stays true so far from its own area, metres: beyond, the European one is taken.</summary>
    private const double MostFromHome = 1_500_000;

    /// <summary>Great Britain, Ireland and Man, with insets for Shetland and the Channel Islands.</summary>
    public static MapArea Islands { get; } = new(
        NationalGrid.Get(GridId.British),
        new(-205_000, -8_000, 665_000, 1_062_000),
        [
            new("Shetland", NationalGrid.Get(GridId.British), new(384_000, 1_066_000, 484_000, 1_223_000), AtTop: true),
            new("Channel Islands", NationalGrid.Get(GridId.ChannelIslands), new(512_000, 5_420_000, 588_000, 5_514_000), AtTop: false),
        ],
        null, []);

    /// <summary>A region, on the plane of the grid in use there.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="polygons">Its polygons, at least one.</param>
    /// <param name="squares">Squares that the region reaches into: they are shown whole.</param>
    public static MapArea Of(string name, IReadOnlyList<GeoPolygon> polygons, IEnumerable<Square> squares)
    {
        var points = polygons.SelectMany(polygon => polygon.Rings[0]).ToArray();
        var middle = new LatLon((points.Min(point => point.Latitude) + points.Max(point => point.Latitude)) / 2, (points.Min(point => point.Longitude) + points.Max(point => point.Longitude)) / 2);
        var plane = NationalGrid.ForPlace(middle) ?? NationalGrid.Get(GridId.European);
        return new(plane, Framed([.. points.Select(plane.FromLatLon), .. squares.SelectMany(square => SquareOutline.On(square, plane))]), [], name, polygons);
    }

    /// <summary>All that the squares lie in, for data from elsewhere.</summary>
    /// <param name="squares">At least one square.</param>
    public static MapArea Around(IReadOnlyCollection<Square> squares)
    {
        var grids = squares.Select(square => square.Grid).Distinct().ToList();
        var plane = NationalGrid.Get(grids is [var only] ? only : GridId.European);
        var points = squares.SelectMany(square => SquareOutline.On(square, plane)).ToArray();
        var box = PlaneBounds.Around(points);
        return plane.Id != GridId.European && box.LongerSide() > MostFromHome ? Around(squares, NationalGrid.Get(GridId.European)) : new(plane, Framed(points), [], null, []);
    }

    /// <summary>True when the map shows the square, in its main part or an inset.</summary>
    public bool Shows(Square square)
    {
        var place = NationalGrid.Get(square.Grid).ToLatLon(square.Centre);
        return Bounds.Contains(Plane.FromLatLon(place)) || Insets.Any(inset => inset.Bounds.Contains(inset.Plane.FromLatLon(place)));
    }

    private static MapArea Around(IReadOnlyCollection<Square> squares, INationalGrid plane) =>
        new(plane, Framed([.. squares.SelectMany(square => SquareOutline.On(square, plane))]), [], null, []);

    private static PlaneBounds Framed(EastNorth[] points)
    {
        var box = PlaneBounds.Around(points);
        var (middle, side) = (box.Middle(), Math.Max(box.LongerSide(), LeastSide));
        double width = Math.Max(box.Width(), side / 2), height = Math.Max(box.Height(), side / 2);
        return new PlaneBounds(middle.Easting - width / 2, middle.Northing - height / 2, middle.Easting + width / 2, middle.Northing + height / 2).Grown(side * Margin);
    }
}

/// <summary>Islands shown beside the main map at the same scale.</summary>
/// <param name="Name">Their name.</param>
/// <param name="Plane">The plane that they are drawn on.</param>
/// <param name="Bounds">The part of that plane, metres.</param>
/// <param name="AtTop">True in the upper right corner of the main map, false in the lower left one.</param>
public sealed record MapInset(string Name, INationalGrid Plane, PlaneBounds Bounds, bool AtTop);
