namespace RangeMap.Maps.Tests;

public class FateLegendTests
{
    // The two grey classes are told apart by their marks; nothing is known of either.
    private static readonly WordClass[] Coloured = [.. FateLegend.Classes.Take(4)];

    [Fact]
    public void NoTwoFatesLookAlikeWithAnyColourVision()
    {
        // Four kinds need no order, so they may and must differ more than the steps of a ramp: five times what can just be seen.
        foreach (var (name, vision) in ColourScience.Vision)
        {
            foreach (var paper in new[] { Coloured.Select(part => part.Colour.Light), Coloured.Select(part => part.Colour.Dark) })
            {
                var seen = paper.Select(hex => ColourScience.Lab(ColourScience.Seen(ColourScience.Linear(hex), vision))).ToArray();
                for (var i = 0; i < seen.Length; i++)
                    Assert.All(seen[..i], other => Assert.True(ColourScience.Distance(other, seen[i]) >= 0.1, $"{name}: class {i} differs by {ColourScience.Distance(other, seen[i])}"));
            }
        }
    }

    [Fact]
    public void EveryFateStandsOutFromItsPaper() =>
        Assert.All(FateLegend.Classes, part =>
        {
            Assert.True(ColourScience.Contrast(part.Colour.Light, Palette.LightPaper) >= 3, part.Value);
            Assert.True(ColourScience.Contrast(part.Colour.Dark, Palette.DarkPaper) >= 3, part.Value);
        });

    [Theory]
    [InlineData("../1999", "before 2000")]
    [InlineData("2000/2009", "2000\u20132009")]
    [InlineData("2010/..", "since 2010")]
    [InlineData("../..", "all years")]
    [InlineData("../2004-06", "up to 2004-06")]
    [InlineData("2004", "2004")]
    [InlineData("2004/2004", "2004")]
    public void PeriodsAreReadAsPeopleSayThem(string period, string words) => Assert.Equal(words, PeriodWords.Of(period));
}
