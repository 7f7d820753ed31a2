using CsCheck;
using NetTopologySuite.Geometries;
using RangeMap.Grids;

namespace RangeMap.Maps.Tests;

/// <summary>What must hold for every map, found out with maps made by chance.</summary>
public class TileRulesTests
{
    private static readonly GeometryFactory Factory = new();

    [Fact]
    public void EveryRingIsAValidExteriorRingWithoutRepeatedPoints() =>
        ForMapsAndZooms((tiles, zoom) =>
        {
            foreach (var tile in AllTiles(tiles, zoom))
            {
                foreach (var feature in tile.Length == 0 ? [] : Assert.Single(RawTile.Message(tile).Layers).Features)
                {
                    var ring = RawTile.Ring(feature.Geometry);
                    Assert.True(RawTile.DoubledArea(ring) > 0);
                    Assert.True(Factory.CreatePolygon([.. ring.Append(ring[0]).Select(point => new Coordinate(point.X, point.Y))]).IsValid);
                    Assert.All(ring, point => Assert.True(point.X is >= -64 and <= 4160 && point.Y is >= -64 and <= 4160));
                }
            }
        });

    [Fact]
    public void KeysAndValuesAndIdsStandOnlyOnceInALayer() =>
        ForMapsAndZooms((tiles, zoom) =>
        {
            foreach (var layer in AllTiles(tiles, zoom).Where(tile => tile.Length > 0).Select(tile => Assert.Single(RawTile.Message(tile).Layers)))
            {
                Assert.Equal((2u, 4096u), (layer.Version, layer.Extent));
                Assert.Distinct(layer.Keys);
                Assert.Distinct(layer.Values.Select(value => value.HasStringValue ? "text " + value.StringValue : $"number {value.UintValue}"));
                Assert.Distinct(layer.Features.Select(feature => feature.Id));
                Assert.All(layer.Features, feature => Assert.True(feature.Tags.Count % 2 == 0
                    && feature.Tags.Where((_, i) => i % 2 == 0).All(key => key < layer.Keys.Count)
                    && feature.Tags.Where((_, i) => i % 2 == 1).All(value => value < layer.Values.Count)));
            }
        });

    /// <summary>Where squares are thinned to pixels, the last test of this class holds instead.</summary>
    [Fact]
    public void ASquareAppearsInExactlyTheTilesThatItTouches() =>
        SomeMaps.Any.Select(Gen.OneOf(4, 5, 6, 7)).Sample((map, zoom) =>
        {
            foreach (var set in TileMatrixSet.All)
            {
                var tiles = new PresenceTiles(map, set);
                var unit = set.TileSide(zoom) / 4096;
                if ((int)map.Size < PixelThinning.Side * unit)
                    continue;
                foreach (var (column, row) in Widened(tiles.Covering(zoom)!.Value, set))
                {
                    var found = TileReading.Read(tiles.Draw(zoom, column, row)).Select(square => square.Name).ToHashSet();
                    var tile = set.TileBounds(zoom, column, row);
                    foreach (var square in map.Squares)
                    {
                        var outline = Factory.CreatePolygon([.. SquareOutline.On(square.Square, set.Plane).Select(point => new Coordinate(point.Easting, point.Northing))]);
                        // Rounding moves an edge by half a unit: squares that touch the buffer by less may be there or not.
                        if (outline.Intersects(Box(tile.Grown(62 * unit))))
                            Assert.Contains(square.Square.ToString(), found);
                        else if (!outline.Intersects(Box(tile.Grown(66 * unit))))
                            Assert.DoesNotContain(square.Square.ToString(), found);
                    }
                }
            }
        }, iter: 30, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void TheTilesOfALevelTogetherShowTheWholeOfEverySquare() =>
        SomeMaps.Any.Sample(map =>
        {
            const int zoom = 5;
            var set = TileMatrixSet.BritishNationalGrid;
            var tiles = new PresenceTiles(map, set);
            var whole = Factory.CreatePolygon([new(0, 0), new(4096, 0), new(4096, 4096), new(0, 4096), new(0, 0)]);
            var area = map.Squares.ToDictionary(square => square.Square.ToString(), _ => 0d);
            foreach (var square in AllTiles(tiles, zoom).SelectMany(TileReading.Read))
                area[square.Name] += square.Polygon.Intersection(whole).Area;
            var unit = set.TileSide(zoom) / 4096;
            foreach (var square in map.Squares)
            {
                var side = square.Square.SideMetres / unit;
                // Half a unit of rounding on each side, and scales of the planes that differ by less than 0.5 %.
                Assert.InRange(area[square.Square.ToString()], (side - 1.5) * (side - 1.5) * 0.99, (side + 1.5) * (side + 1.5) * 1.01);
            }
        }, iter: 60, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void ThinnedTilesShowNoPixelTwiceAndSomethingNearEverySquare() =>
        SomeMaps.Any.Where(map => map.Size == SquareSize.Km1).Sample(map =>
        {
            var tiles = new PresenceTiles(map, TileMatrixSet.BritishNationalGrid);
            var drawn = TileReading.Read(tiles.Draw(0, 0, 0)).Select(square => square.Polygon.EnvelopeInternal).ToArray();
            Assert.Distinct(drawn.Select(box => (box.MinX, box.MinY)));
            foreach (var square in map.Squares.Where(square => square.Square.Grid == GridId.British))
            {
                var middle = new Coordinate((square.Square.Centre.Easting + 640_000) / 625, (1_920_000 - square.Square.Centre.Northing) / 625);
                Assert.Contains(drawn, box => box.Contains(middle));
            }
        }, iter: 60, seed: "0N0XIzNsQ0O2");

    private static void ForMapsAndZooms(Action<PresenceTiles, int> check) =>
        SomeMaps.Any.Select(Gen.OneOf(TileMatrixSet.WebMercatorQuad, TileMatrixSet.BritishNationalGrid), Gen.Int[0, 7])
            .Sample((map, set, zoom) => check(new PresenceTiles(map, set), zoom), iter: 100, seed: "0N0XIzNsQ0O2");

    private static IEnumerable<byte[]> AllTiles(PresenceTiles tiles, int zoom) =>
        tiles.Covering(zoom)!.Value.Tiles().Select(tile => tiles.Draw(zoom, tile.Column, tile.Row));

    private static IEnumerable<(int Column, int Row)> Widened(TileRange range, TileMatrixSet set) =>
        (range with { FirstColumn = range.FirstColumn - 1, LastColumn = range.LastColumn + 1, FirstRow = range.FirstRow - 1, LastRow = range.LastRow + 1 })
            .Tiles().Where(tile => set.Contains(range.Zoom, tile.Column, tile.Row));

    private static Polygon Box(PlaneBounds box) =>
        Factory.CreatePolygon([new(box.West, box.South), new(box.East, box.South), new(box.East, box.North), new(box.West, box.North), new(box.West, box.South)]);
}
