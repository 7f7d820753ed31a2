namespace RangeMap.Change.Tests.Margins;

public class ThinningTests
{
    private static readonly int[] _eight = [12, 7, 5, 3, 2, 1, 1, 1];

    // Computed with R 4.2.2 from the hypergeometric distribution.
    [Theory]
    [InlineData(8, 4.459612)]
    [InlineData(16, 6.120064)]
    public void TheExpectedNumberOfSquaresIsThatOfDrawingWithoutReplacement(int wanted, double squares)
    {
        var kept = new KeptShares(32, wanted);
        Assert.Equal(squares, _eight.Sum(kept.Of), 1e-6);
    }

    // The draws that margins are made of, against the same numbers: 40,000 draws have a standard error below 0.007 squares.
    [Theory]
    [InlineData(8, 4.459612)]
    [InlineData(16, 6.120064)]
    public void DrawingManyTimesComesToTheExpectedNumberOfSquares(int wanted, double squares)
    {
        var sum = 0;
        for (var i = 0; i < 40_000; i++)
        {
            var draw = new RecordDraw(32, wanted, new(5, (ulong)i));
            sum += _eight.Count(records => draw.Holds(records));
        }

        Assert.Equal(squares, sum / 40_000.0, 0.03);
    }

    [Fact]
    public void EverySquareIsHeldAsOftenAsItShouldBeInWhateverOrderItIsAsked()
    {
        var kept = new KeptShares(32, 8);
        foreach (var order in new[] { _eight, [.. _eight.Reverse()] })
        {
            var held = new int[8];
            for (var i = 0; i < 40_000; i++)
            {
                var draw = new RecordDraw(32, 8, new(6, (ulong)i));
                for (var square = 0; square < 8; square++)
                    held[square] += draw.Holds(order[square]) ? 1 : 0;
            }

            for (var square = 0; square < 8; square++)
                Assert.Equal(kept.Of(order[square]), held[square] / 40_000.0, 0.013);
        }
    }

    [Fact]
    public void AllRecordsHoldEverySquareAndNoneHoldsNone()
    {
        var (all, none) = (new RecordDraw(32, 32, new(1)), new RecordDraw(32, 0, new(1)));
        Assert.All(_eight, records => Assert.True(all.Holds(records)));
        Assert.All(_eight, records => Assert.False(none.Holds(records)));
        Assert.Equal(1, new KeptShares(32, 32).Of(1));
        Assert.Equal(0, new KeptShares(32, 0).Of(12));
    }

    [Fact]
    public void SquaresWithThousandsOfRecordsHaveTheirShareToo()
    {
        var kept = new KeptShares(1_000_000, 1000);
        // 1 - C(M-n, m)/C(M, m) is 1 - C(M-m, n)/C(M, n), here within rounding of 1 - (1 - m/M)^n for n = 1 only.
        Assert.Equal(0.001, kept.Of(1), 1e-12);
        Assert.Equal(1 - Math.Exp(LogChoose(1_000_000 - 3000, 1000) - LogChoose(1_000_000, 1000)), kept.Of(3000), 1e-8);
    }

    private static double LogChoose(int n, int k) => MathNet.Numerics.SpecialFunctions.BinomialLn(n, k);
}
