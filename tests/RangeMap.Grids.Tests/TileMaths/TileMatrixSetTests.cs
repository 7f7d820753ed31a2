namespace RangeMap.Grids.Tests;

public sealed class TileMatrixSetTests
{
    [Fact]
    public void AtLevelEightATileOfTheBritishSetIsOneTenKilometreSquare()
    {
        var set = TileMatrixSet.BritishNationalGrid;
        var square = GridReference.Parse("TQ38");
        var tile = Assert.Single(set.TilesOf(new(square.Easting, square.Northing, square.Easting + 10_000, square.Northing + 10_000), 8).Tiles());
        Assert.Equal(new PlaneBounds(530_000, 180_000, 540_000, 190_000), set.TileBounds(8, tile.Column, tile.Row));
        Assert.Equal(10_000.0 / 256, set.CellSize(8));
        Assert.Equal(10_000, set.CellSize(0));
    }

    [Fact]
    public void TheWebSetsWorldIsTheRegisteredOne()
    {
        // OGC Two Dimensional Tile Matrix Set 2.0, annexe D: corner 20037508.3427892, cell size of level 0 156543.033928041.
        Assert.Equal(-20_037_508.3427892, TileMatrixSet.WebMercatorQuad.TopLeft.Easting, 1e-6);
        Assert.Equal(156_543.033928041, TileMatrixSet.WebMercatorQuad.CellSize(0), 1e-8);
        Assert.Equal(TileMatrixSet.WebMercatorQuad.TopLeft.Northing, TileMatrixSet.WebMercatorQuad.Project(new(90, 0)).Northing, 1e-6);
    }

    [Fact]
    public void EveryTileToLevelFiveIsFoundFromItsOwnBoxAlone()
    {
        foreach (var set in TileMatrixSet.All)
        {
            for (var zoom = 0; zoom <= 5; zoom++)
            {
                foreach (var (column, row) in new TileRange(zoom, 0, (1 << zoom) - 1, 0, (1 << zoom) - 1).Tiles())
                    Assert.Equal([(column, row)], set.TilesOf(set.TileBounds(zoom, column, row).Grown(-0.001), zoom).Tiles());
            }
        }
    }

    [Fact]
    public void ABoxOutsideTheWorldHasNoTiles()
    {
        Assert.Equal(0, TileMatrixSet.BritishNationalGrid.TilesOf(new(3_000_000, 0, 4_000_000, 1), 3).Count);
        Assert.Equal(0, TileMatrixSet.BritishNationalGrid.TilesOf(new(-2_000_000, 0, -1_000_000, 1), 3).Count);
        Assert.Equal(64, TileMatrixSet.BritishNationalGrid.TilesOf(new(-1e9, -1e9, 1e9, 1e9), 3).Count);
    }

    [Fact]
    public void TilesThatTheSetHasNotAreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TileMatrixSet.WebMercatorQuad.TileBounds(3, 8, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => TileMatrixSet.WebMercatorQuad.MatrixSize(25));
        Assert.Same(TileMatrixSet.BritishNationalGrid, TileMatrixSet.Find("BritishNationalGrid"));
        Assert.Null(TileMatrixSet.Find("other"));
    }
}
