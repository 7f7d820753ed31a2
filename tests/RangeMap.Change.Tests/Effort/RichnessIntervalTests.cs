namespace RangeMap.Change.Tests.Effort;

public class RichnessIntervalTests
{
    // Computed by hand from eq. 5 and 7: 12 lists, 10 taxa on one and 6 on two. A = 11/12; variance 6 (0.4583 · 2.7778 + 0.8403 · 4.6296 + 0.2101 · 7.7160) = 40.7054;
    // 7.6389 missed; spread exp(1.959964 · sqrt(ln(1 + 40.7054 / 58.3526))) = 4.1612.
    [Fact]
    public void AnIntervalWorkedOutByHand()
    {
        int[] lists = [.. Enumerable.Repeat(1, 10), .. Enumerable.Repeat(2, 6), .. Enumerable.Repeat(6, 26)];
        var estimate = RichnessInterval.FromLists(lists, 12);
        Assert.Null(estimate.Refused);
        Assert.Equal(49.638889, estimate.Richness.Expected, 1e-6);
        Assert.Equal(42 + 7.638889 / 4.1612, estimate.Interval!.Value.Low, 0.01);
        Assert.Equal(42 + 7.638889 * 4.1612, estimate.Interval.Value.High, 0.05);
    }

    /// <summary>Where all taxa are alike to be met, Chao2 has no bias, and the interval must hold the true number about as often as it says.</summary>
    [Fact]
    public void TheIntervalHoldsTheTrueNumberOfTaxaThatAreAlikeToBeMet()
    {
        const int taxa = 60, lists = 12, worlds = 500;
        var (chance, held, given) = (new Pcg(7, 1), 0, 0);
        for (var world = 0; world < worlds; world++)
        {
            var counts = new List<int>();
            for (var taxon = 0; taxon < taxa; taxon++)
            {
                var met = 0;
                for (var list = 0; list < lists; list++)
                    met += chance.NextChance(0.12) ? 1 : 0;
                if (met > 0)
                    counts.Add(met);
            }

            if (RichnessInterval.FromLists(counts.ToArray(), lists).Interval is not { } interval)
                continue;
            given++;
            held += interval.Low <= taxa && taxa <= interval.High ? 1 : 0;
        }

        Assert.Equal(worlds, given);
        Assert.InRange(held / (double)given, 0.90, 0.99);
    }

    [Fact]
    public void WhatTellsTooLittleHasAReasonInPlaceOfAnInterval()
    {
        Assert.Equal("Not enough visits: 4 of at least 5.", RichnessInterval.FromLists([1, 2], 4).Refused);
        Assert.Equal("Nothing was found on any visit.", RichnessInterval.FromLists([], 9).Refused);
        Assert.Contains("none that was missed", RichnessInterval.FromLists([9, 8], 9).Refused, StringComparison.Ordinal);
        Assert.Null(RichnessInterval.FromLists([9, 8], 9).Interval);
    }
}
