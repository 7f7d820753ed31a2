using System.Text.Json;
using CsCheck;

namespace RangeMap.Maps.Tests;

public class LegendTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(8)]
    [InlineData(64)]
    public void EveryColourStandsOutFromItsPaper(int classes) =>
        Assert.All(Palette.Of(classes), colour =>
        {
            Assert.True(ColourScience.Contrast(colour.Light, Palette.LightPaper) >= 3);
            Assert.True(ColourScience.Contrast(colour.Dark, Palette.DarkPaper) >= 3);
        });

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(6)]
    [InlineData(8)]
    public void NoTwoClassesLookAlikeWithAnyColourVision(int classes)
    {
        // In Oklab a difference of 0.02 is about what can just be seen side by side (from memory, not verified).
        var colours = Palette.Of(classes);
        foreach (var ramp in new[] { colours.Select(colour => colour.Light).ToArray(), colours.Select(colour => colour.Dark).ToArray() })
        {
            foreach (var vision in ColourScience.Vision.Values)
            {
                var seen = ramp.Select(hex => ColourScience.Lab(ColourScience.Seen(ColourScience.Linear(hex), vision))).ToArray();
                for (var i = 0; i < seen.Length; i++)
                    Assert.All(seen[..i], other => Assert.True(ColourScience.Distance(other, seen[i]) >= 0.025));
            }
        }
    }

    [Fact]
    public void LightnessAloneTellsTheOrder()
    {
        var colours = Palette.Of(8);
        Assert.Equal(colours.OrderByDescending(colour => ColourScience.Lab(ColourScience.Linear(colour.Light))[0]), colours);
        Assert.Equal(colours.OrderBy(colour => ColourScience.Lab(ColourScience.Linear(colour.Dark))[0]), colours);
    }

    [Fact]
    public void TheModelOfColourVisionLeavesWhiteWhite() =>
        Assert.All(ColourScience.Vision.Values, vision => Assert.All(vision, row => Assert.Equal(1, row.Sum(), 5)));

    [Fact]
    public void ClassesOfYearsFollowEachOtherAndCoverTheSpan() =>
        Gen.Int[1, 9999].Select(Gen.Int[1, 9999]).Sample((a, b) =>
        {
            var (first, last) = (Math.Min(a, b), Math.Max(a, b));
            var classes = Legend.OfYears(PropertyNames.First, first, last).Classes;
            Assert.InRange(classes.Count, 1, Legend.MostYearClasses);
            Assert.True(classes[0].From <= first && last < classes[^1].To);
            Assert.All(classes.Zip(classes.Skip(1)), pair => Assert.Equal(pair.First.To, pair.Second.From));
        }, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void YearsFrom1987To2024MakeFiveYearClasses()
    {
        var labels = Legend.OfYears(PropertyNames.First, 1987, 2024).Classes.Select(part => part.Label);
        Assert.Equal(["1987–1989", "1990–1994", "1995–1999", "2000–2004", "2005–2009", "2010–2014", "2015–2019", "2020–2024"], labels);
    }

    [Fact]
    public async Task TheJsonNamesEachPeriodAsItWasAsked()
    {
        var legend = Legend.OfPeriods(PropertyNames.Period, Drawing.TwoPeriods);
        var root = JsonDocument.Parse(await Written.BytesAsync(stream => LegendJson.WriteAsync(stream, legend))).RootElement;
        Assert.Equal("period", root.GetProperty("property").GetString());
        Assert.Equal(["../1999", "2000/.."], root.GetProperty("classes").EnumerateArray().Select(part => part.GetProperty("label").GetString()));
    }
}
