namespace RangeMap.Grids.Tests;

public sealed class TetradTests
{
    /// <summary>The tetrads of a 10 km square as they lie on the map, north at the top.</summary>
    private static readonly string[] Drawing = ["EJPUZ", "DINTY", "CHMSX", "BGLRW", "AFKQV"];

    [Fact]
    public void EveryTetradLetterLiesWhereTheMapShowsIt()
    {
        for (var row = 0; row < 5; row++)
        {
            for (var column = 0; column < 5; column++)
            {
                var square = GridReference.Parse("TQ75" + Drawing[row][column]);
                Assert.Equal(new Square(GridId.British, SquareSize.Km2, 570_000 + 2_000 * column, 150_000 + 2_000 * (4 - row)), square);
            }
        }
    }

    [Fact]
    public void TetradGOfTQ75HoldsTQ7252() =>
        Assert.True(GridReference.Parse("TQ7252").TryCoarsen(SquareSize.Km2, out var tetrad) && tetrad.ToString() == "TQ75G");
}
