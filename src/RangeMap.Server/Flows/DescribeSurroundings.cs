using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>Adds to the answer about a place what lies round it: nation or sea, land, neighbours, other grids, the outline.</summary>
public static class DescribeSurroundings
{
    private const int OutlineDecimals = 7;

    /// <summary>The answer with its surroundings; one with an error comes back as it is.</summary>
    /// <param name="answer">The answer of <see cref="DescribePlace"/>.</param>
    /// <param name="withOutline">True to add the square's outline.</param>
    public static PlaceAnswer Add(PlaceAnswer answer, bool withOutline)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer is not { Ok: true, Latitude: { } latitude, Longitude: { } longitude })
            return answer;
        var place = new LatLon(latitude, longitude);
        var square = answer.Square;
        var around = answer with
        {
            Neighbours = [.. SquareNeighbours.Of(square).Select(neighbour => neighbour.ToString())],
            OtherSystems = [.. OtherGrids(square.Grid, place).Select(grid => On(grid, place, square.Size))],
            Outline = withOutline ? OutlineOf(square) : null,
        };
        return NationalGrid.ForPlace(place) is { } home ? WithLand(around, place, home) : around;
    }

    private static PlaceAnswer WithLand(PlaceAnswer answer, LatLon place, INationalGrid home)
    {
        var nearest = BaseGeography.Land.Nearest(place);
        var onLand = nearest is { Km: 0 };
        return answer with
        {
            Nation = onLand ? BaseGeography.Nations.HoldingOrNearest(place) : null,
            KmFromLand = onLand || nearest is null ? null : Math.Round(nearest.Value.Km, 3),
            LandShare = HectadOf(answer, place, home) is { } hectad ? Math.Round(ShareOf(hectad), 5) : null,
        };
    }

    /// <summary>The 10 km square that holds the place: of the grid that the place was named on.</summary>
    private static Square? HectadOf(PlaceAnswer answer, LatLon place, INationalGrid home) =>
        answer.IsPoint ? SquareFinder.SquareAt(home, place, SquareSize.Km10) : answer.Square.TryCoarsen(SquareSize.Km10, out var hectad) ? hectad : null;

    /// <summary>As counted on the full-detail coast where the list has the square; else from the simplified one.</summary>
    private static double ShareOf(Square hectad) =>
        BaseGeography.Squares.Has(hectad) ? BaseGeography.Squares.ShareOf(hectad) : BaseGeography.Land.LandShare(hectad);

    /// <summary>The grids beside its own on which the place is found: its home grid, the further ones of that country, the European and UTM.</summary>
    private static IEnumerable<INationalGrid> OtherGrids(GridId own, LatLon place)
    {
        GridId[] ofHome = NationalGrid.ForPlace(place)?.Id switch
        {
            GridId.Irish => [GridId.Irish, GridId.IrishTransverseMercator],
            GridId.ChannelIslands => [GridId.ChannelIslands, GridId.ChannelIslandsWgs84],
            { } british => [british],
            null => [GridId.Dutch],
        };
        GridId[] all = [.. ofHome, GridId.European, place.Latitude < 0 ? GridId.UtmSouth : GridId.UtmNorth];
        return all.Where(id => id != own).Select(NationalGrid.Get).Where(grid => grid.Contains(grid.FromLatLon(place)));
    }

    private static OtherSystem On(INationalGrid grid, LatLon place, SquareSize size)
    {
        var point = grid.FromLatLon(place);
        return new(grid.Name, grid.Epsg, Square.At(grid.Id, size, point).ToString(), Math.Round(point.Easting, 3), Math.Round(point.Northing, 3));
    }

    private static OutlineJson OutlineOf(Square square)
    {
        static double Rounded(double degrees) => Math.Round(degrees, OutlineDecimals);
        return new("Polygon", [[.. SquareOutline.InLatLon(square).Select(corner => new[] { Rounded(corner.Longitude), Rounded(corner.Latitude) })]]);
    }
}
