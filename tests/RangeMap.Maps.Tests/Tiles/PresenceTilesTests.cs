using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Maps.Tests;

public class PresenceTilesTests
{
    private static readonly TileMatrixSet British = TileMatrixSet.BritishNationalGrid;

    // At level 8 of the British set a tile is exactly one 10 km square: column (E + 640,000) / 10,000, row (1,920,000 - N) / 10,000 - 1.
    private static readonly Square Corner = new(GridId.British, SquareSize.Km10, 400_000, 300_000);

    [Fact]
    public void AtLevelEightOfTheBritishSetASquareFillsItsTileAndTheBuffer()
    {
        var tiles = new PresenceTiles(Drawing.Of(Corner, "#"), British);
        var square = Assert.Single(TileReading.Read(tiles.Draw(8, 104, 161)));
        var box = square.Polygon.EnvelopeInternal;
        Assert.Equal((0, 0, 4096, 4096), (box.MinX, box.MinY, box.MaxX, box.MaxY));
        Assert.Equal(4096d * 4096, square.Polygon.Area);
    }

    [Fact]
    public void OneLevelDeeperASquareIsClippedToTheBuffer()
    {
        var tiles = new PresenceTiles(Drawing.Of(Corner, "#"), British);
        var box = Assert.Single(TileReading.Read(tiles.Draw(9, 208, 322))).Polygon.EnvelopeInternal;
        Assert.Equal((0, 0, 4096 + 64, 4096 + 64), (box.MinX, box.MinY, box.MaxX, box.MaxY));
    }

    [Fact]
    public void ANeighbouringTileShowsTheSquareOnlyInsideItsBuffer()
    {
        var tiles = new PresenceTiles(Drawing.Of(Corner, "#"), British);
        Assert.Empty(tiles.Draw(8, 106, 161));
        // The square ends exactly on the tile's edge; of its buffer 64 units reach into the tile to the east.
        var box = Assert.Single(TileReading.Read(tiles.Draw(8, 105, 161))).Polygon.EnvelopeInternal;
        Assert.Equal((-64, 0, 0, 4096), (box.MinX, box.MinY, box.MaxX, box.MaxY));
    }

    [Fact]
    public void TheIndependentReaderFindsThePropertiesThatWereDrawn()
    {
        var tiles = new PresenceTiles(Drawing.Of(Corner, "ab#"), British);
        var read = TileReading.Read(tiles.Draw(3, 3, 5)).OrderBy(square => square.Name).ToArray();
        Assert.Equal(["SK00", "SK10", "SK20"], read.Select(square => square.Name));
        var numbers = read.Select(square => new[] { "first", "last", "records", "period", "latest" }.Select(name => Convert.ToInt32(square.Properties[name], CultureInfo.InvariantCulture)));
        Assert.Equal([[1980, 1990, 2, 0, 0], [2004, 2020, 5, 1, 1], [1980, 2020, 7, 0, 1]], numbers);
        Assert.All(read, square => Assert.Equal("GB", square.Properties["grid"]));
        Assert.Equal([true, false, true], read.Select(square => square.Properties.ContainsKey("p0")));
        Assert.Equal([false, true, true], read.Select(square => square.Properties.ContainsKey("p1")));
        Assert.Equal(5, Convert.ToInt32(read[2].Properties["p1"], CultureInfo.InvariantCulture));
    }

    [Fact]
    public void ASquareKeepsItsCodeAsIdAtEveryZoom()
    {
        foreach (var set in TileMatrixSet.All)
        {
            var tiles = new PresenceTiles(Drawing.Of(Corner, "#"), set);
            for (var zoom = 0; zoom <= 12; zoom++)
            {
                var (column, row) = tiles.Covering(zoom)!.Value.Tiles().First();
                var square = Assert.Single(TileReading.Read(tiles.Draw(zoom, column, row)));
                Assert.Equal((ulong)Corner.Code, square.Id);
            }
        }
    }

    [Fact]
    public void SquaresTooSmallToTellApartAreThinnedToTheEarliestOfEachPixel()
    {
        // 1 km squares are 1.6 units wide at level 0 of the British set: 5 by 5 of them share a pixel of 8 units.
        var corner = new Square(GridId.British, SquareSize.Km1, 400_000, 300_000);
        var tiles = new PresenceTiles(Drawing.Of(corner, "bbbbb", "bbbbb", "bbabb", "bbbbb", "bbbbb"), British);
        var square = Assert.Single(TileReading.Read(tiles.Draw(0, 0, 0)));
        Assert.Equal("SK0202", square.Name);
        Assert.Equal(64, square.Polygon.Area);
        Assert.Equal(25, TileReading.Read(tiles.Draw(3, 3, 5)).Count);
    }

    [Fact]
    public void AnIrishSquareOnTheBritishPlaneIsTurnedAndKeepsItsArea()
    {
        var irish = new Square(GridId.Irish, SquareSize.Km10, 310_000, 370_000);
        var tiles = new PresenceTiles(Drawing.Of(irish, "#"), British);
        var (column, row) = tiles.Covering(5)!.Value.Tiles().First();
        var polygon = Assert.Single(TileReading.Read(tiles.Draw(5, column, row))).Polygon;
        Assert.True(polygon.IsValid);
        // 10 km are 512 units at level 5; the scales of the two planes differ by less than 0.2 % there.
        Assert.InRange(polygon.Area, 512 * 512 * 0.99, 512 * 512 * 1.01);
        Assert.True(polygon.EnvelopeInternal.Width > 520);
    }

    [Fact]
    public void AMapWithoutSquaresHasOnlyEmptyTiles()
    {
        var tiles = new PresenceTiles(Drawing.Of(Corner, "."), British);
        Assert.Empty(tiles.Draw(0, 0, 0));
        Assert.Empty(tiles.Draw(8, 104, 161));
        Assert.Null(tiles.Covering(3));
    }

    [Theory]
    [InlineData(-1, 0, 0)]
    [InlineData(2, 4, 0)]
    [InlineData(2, 0, -1)]
    [InlineData(40, 0, 0)]
    public void ATileOutsideTheSetIsRefused(int zoom, int column, int row) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new PresenceTiles(Drawing.Of(Corner, "#"), British).Draw(zoom, column, row));

    [Fact]
    public void ManyThreadsDrawTheSameBytes()
    {
        var tiles = new PresenceTiles(Drawing.Of(new(GridId.British, SquareSize.Km1, 400_000, 300_000), "a#bb#", "##b##", "..#.."), British);
        foreach (var (zoom, column, row) in new[] { (0, 0, 0), (2, 1, 2), (4, 6, 10) })
        {
            var expected = new PresenceTiles(Drawing.Of(new(GridId.British, SquareSize.Km1, 400_000, 300_000), "a#bb#", "##b##", "..#.."), British).Draw(zoom, column, row);
            Parallel.For(0, 64, _ => Assert.Equal(expected, tiles.Draw(zoom, column, row)));
        }
    }
}
