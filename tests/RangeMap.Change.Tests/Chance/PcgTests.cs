namespace RangeMap.Change.Tests;

public class PcgTests
{
    // The demonstration program of the reference C implementation of PCG32 (O'Neill, Apache-2.0), first round with seed 42
    // and stream 54. From memory, not verified against a copy; six of six numbers agree, which chance does not do.
    [Fact]
    public void TheReferenceStreamIsReproduced()
    {
        var chance = new Pcg(42, 54);
        uint[] expected = [0xa15c02b7, 0x7b47f409, 0xba1d3330, 0x83d2f293, 0xbfa4784b, 0xcbed606e];
        foreach (var number in expected)
            Assert.Equal(number, chance.NextUInt());
    }

    [Fact]
    public void NormalNumbersHaveMeanNoughtAndDeviationOne()
    {
        var chance = new Pcg(1);
        double sum = 0, squares = 0;
        for (var i = 0; i < 100_000; i++)
        {
            var value = chance.NextNormal();
            sum += value;
            squares += value * value;
        }

        Assert.InRange(sum / 100_000, -0.015, 0.015);
        Assert.InRange(squares / 100_000, 0.98, 1.02);
    }

    [Fact]
    public void AnIndexStaysBelowItsCount()
    {
        var chance = new Pcg(3);
        var seen = new HashSet<int>();
        for (var i = 0; i < 1000; i++)
            seen.Add(chance.NextIndex(7));
        Assert.Equal([0, 1, 2, 3, 4, 5, 6], seen.Order());
    }
}
