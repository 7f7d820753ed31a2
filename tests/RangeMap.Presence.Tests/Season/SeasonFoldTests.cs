using CsCheck;
using RangeMap.Records;
using RangeMap.TestKit;

namespace RangeMap.Presence.Tests;

public sealed class SeasonFoldTests
{
    private static readonly QualityCounts Usable = new(1, 1, 0);

    [Theory]
    // ISO 8601 weeks: 3 June 1998 is in week 23; 28 December 2020 to 3 January 2021 is week 53.
    [InlineData("1998-06-03", 23)]
    [InlineData("1998-06-01/1998-06-07", 23)]
    [InlineData("1998-06-04/1998-06-10", 23)]
    [InlineData("1998-06-05/1998-06-11", 24)]
    [InlineData("1998-06-07/1998-06-08", 23)]
    [InlineData("2021-01-01", 53)]
    public void ADayOrAWeekCountsInTheWeekOfItsMiddle(string days, int week)
    {
        var stage = Assert.Single(Fold("../..", Entry(days, "worker")).Periods[0].Stages);

        Assert.Equal(("worker", 1, 1), (stage.Stage, stage.Records, stage.Weeks[week - 1]));
        Assert.Equal(53, stage.Weeks.Count);
    }

    [Fact]
    public void WhatIsTooVagueIsReportedAndStillCountsForItsPlant()
    {
        var chart = Fold("2000/2009,2010/2019", Entry("2005-06", "worker", "bramble"), Entry("2009-12-30/2010-01-02", "worker"), Entry("2005-06-01/2005-06-08", "queen"));

        Assert.Equal(new(2, 1, 0), chart.Omitted);
        Assert.Empty(chart.Periods[0].Stages);
        Assert.Equal(new PlantVisits("bramble", 1), Assert.Single(chart.Periods[0].Plants));
        Assert.Equal([2, 0], chart.Periods.Select(p => p.Records));
    }

    [Fact]
    public void PlantsAreCountedWithoutRegardToCaseAndUnderTheirUsualSpelling()
    {
        var plants = Fold("../..", Entry("2005-06-01", null, "Bramble | Ivy"), Entry("2005-06-01", null, "bramble"), Entry("2005-06-01", null, "bramble"), Entry("2005-06-01", null)).Periods[0].Plants;

        Assert.Equal([new("bramble", 3), new("Ivy", 1)], plants);
    }

    [Fact]
    public void RecordsBelowTheQualityAskedAreReported()
    {
        var entries = new[] { Entry("2005-06-01", "queen") with { Counts = new(3, 2, 1) } };
        var chart = SeasonFold.Fold(entries, Periods("../.."), Quality.Confirmed);

        Assert.Equal(1, chart.Periods[0].Stages[0].Records);
        Assert.Equal(2, chart.Omitted.BelowQuality);
    }

    [Fact]
    public void AbsentAndRejectedRecordsSayNothingOfASeason()
    {
        var record = Some.Record("SK32", "2005-06-01") with { Sex = "male", Host = "ivy" };

        Assert.True(SeasonEntry.TryOf(record, out var entry));
        Assert.Equal(("male", "ivy", Usable), (entry.Stage, entry.Host, entry.Counts));
        Assert.False(SeasonEntry.TryOf(record with { Present = false }, out _));
        Assert.False(SeasonEntry.TryOf(record with { Status = ReviewStatus.Rejected }, out _));
    }

    [Fact]
    public void StagesStandByNameAndThoseWithoutLast() => Assert.Equal(
        ["queen", "worker", null],
        Fold("../..", Entry("2005-06-01", null), Entry("2005-06-01", "worker"), Entry("2005-06-01", "queen")).Periods[0].Stages.Select(s => s.Stage));

    [Fact]
    public void NothingIsLostAndTheOrderDoesNotMatter()
    {
        var day = Gen.Int[730_000, 735_000].Select(Gen.Int[0, 20], (first, length) => new DayRange(DateOnly.FromDayNumber(first), DateOnly.FromDayNumber(first + length)));
        var entry = Gen.Select(day, OneOf("queen", "worker", null), OneOf("ivy", "Ivy", "ivy | willow", null), (d, s, h) => new SeasonEntry(s, h, d, Usable));
        entry.Array[0, 50].Sample(entries =>
        {
            var chart = SeasonFold.Fold(entries, Periods("../2005,2006/.."), Quality.Usable);
            var back = SeasonFold.Fold(entries.Reverse(), Periods("../2005,2006/.."), Quality.Usable);
            Assert.Equal(entries.Length, chart.Periods.Sum(p => p.Records) + chart.Omitted.BetweenPeriods);
            Assert.Equal(entries.Length, chart.Periods.Sum(p => p.Stages.Sum(s => s.Records)) + chart.Omitted.BetweenPeriods + chart.Omitted.TooVague);
            Assert.Equal(chart.Periods.SelectMany(p => p.Plants), back.Periods.SelectMany(p => p.Plants));
            Assert.Equal(chart.Periods.SelectMany(p => p.Stages).SelectMany(s => s.Weeks), back.Periods.SelectMany(p => p.Stages).SelectMany(s => s.Weeks));
        });
    }

    private static Gen<string?> OneOf(params string?[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    private static SeasonChart Fold(string periods, params SeasonEntry[] entries) => SeasonFold.Fold(entries, Periods(periods), Quality.Usable);

    private static SeasonEntry Entry(string days, string? stage, string? plant = null) =>
        new(stage, plant, days.Length == 7 ? DayRange.Month(int.Parse(days[..4], null), int.Parse(days[5..], null)) : Some.Days(days), Usable);

    private static IReadOnlyList<Period> Periods(string text) => PeriodText.TryParseList(text, out var periods, out var why) ? periods : throw new ArgumentException(why);
}
