namespace RangeMap.Grids.Tests;

public sealed class GridReferenceBatchTests
{
    [Fact]
    public void AColumnIsReadAsItsTextsAre()
    {
        string[] texts = ["TQ3080", "nowhere", "J3374", "30UXC9912", ""];
        var squares = new Square[5];
        Assert.Equal(3, GridReferenceBatch.Parse(texts, default, squares));
        Assert.Equal([GridReference.Parse("TQ3080"), default, GridReference.Parse("J3374"), GridReference.Parse("30UXC9912"), default], squares);
    }

    [Fact]
    public void TooLittleRoomIsRefused() =>
        Assert.Throws<ArgumentException>(() => GridReferenceBatch.Parse(["TQ", "SU"], default, new Square[1]));

    [Theory]
    [InlineData("TQ 308 801")]
    [InlineData("N45SE")]
    [InlineData("ITM 715 734")]
    [InlineData("30UXC9912")]
    [InlineData("10kmE342N321")]
    public void ReadingAllocatesNothing(string text)
    {
        string[] texts = [.. Enumerable.Repeat(text, 1000)];
        var squares = new Square[1000];
        // Code that is not yet compiled for speed may put values in boxes, so the first rounds do not count.
        var allocated = 1L;
        for (var round = 0; round < 500 && allocated > 0; round++)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            GridReferenceBatch.Parse(texts, default, squares);
            allocated = GC.GetAllocatedBytesForCurrentThread() - before;
            Thread.Sleep(allocated > 0 ? 10 : 0);
        }

        Assert.Equal(0, allocated);
    }
}
