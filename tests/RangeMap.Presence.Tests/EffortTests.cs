using CsCheck;
using RangeMap.Grids;

namespace RangeMap.Presence.Tests;

public class EffortTests
{
    private static readonly int Day = new DateOnly(2005, 6, 1).DayNumber;

    [Fact]
    public void OneOutingThroughTwoMonadsIsTwoVisitsToMonadsAndOneToTheHectad()
    {
        var log = Log(Note("SK3628", Day, 1, 1), Note("SK3629", Day, 1, 2), Note("SK3628", Day, 1, 3));
        Assert.Equal([2], Lengths(Effort.Of(log, SquareSize.Km1, _ => true), "SK3628"));
        Assert.Equal([3], Lengths(Effort.Of(log, SquareSize.Km10, _ => true), "SK32"));
    }

    [Fact]
    public void TwoRecordersOnOneDayAreTwoVisits() =>
        Assert.Equal([1, 1], Lengths(Effort.Of(Log(Note("SK3628", Day, 1, 1), Note("SK3628", Day, 2, 1)), SquareSize.Km10, _ => true), "SK32"));

    [Fact]
    public void AnAbsenceIsAVisitThatLengthensNoList() =>
        Assert.Equal([0], Lengths(Effort.Of(Log(Note("SK3628", Day, 1, 1) with { Present = false }), SquareSize.Km10, _ => true), "SK32"));

    [Fact]
    public void TaxaOfAnotherGroupMakeNoVisit() =>
        Assert.Empty(Lengths(Effort.Of(Log(Note("SK3628", Day, 1, 7)), SquareSize.Km10, taxon => taxon != 7), "SK32"));

    [Fact]
    public void OnlyVisitsOfThePeriodCount()
    {
        var effort = Effort.Of(Log(Note("SK3628", Day, 1, 1), Note("SK3628", Day + 400, 1, 1)), SquareSize.Km10, _ => true);
        Assert.Equal(1, effort.Visits(GridReference.Parse("SK32"), new(Day, Day + 1, "")));
        Assert.Equal(0, effort.Visits(GridReference.Parse("SK32"), new(Day + 1, Day + 400, "")));
    }

    [Fact]
    public void CompleteListsAreToldFromOtherVisits()
    {
        var effort = Effort.Of(Log(Note("SK3628", Day, 1, 1) with { Complete = true }, Note("SK3628", Day, 1, 2), Note("SK3628", Day + 1, 1, 1)), SquareSize.Km1, _ => true);
        var square = GridReference.Parse("SK3628");
        Assert.Equal((2, 1), (effort.Visits(square, new(Day, Day + 2, "")), effort.CompleteVisits(square, new(Day, Day + 2, ""))));
        Assert.Equal(0, effort.CompleteVisits(square, new(Day + 1, Day + 2, "")));
    }

    [Fact]
    public void AListThatIsCompleteForOneGroupIsNotForAnother()
    {
        var log = Log(Note("SK3628", Day, 1, 1) with { Complete = true }, Note("SK3628", Day, 1, 7));
        Assert.Equal(0, Effort.Of(log, SquareSize.Km1, taxon => taxon == 7).CompleteVisits(GridReference.Parse("SK3628"), new(Day, Day + 1, "")));
    }

    [Fact]
    public void WhatACompleteListLacksWasLookedFor()
    {
        var lists = VisitList.Of(
            Log(Note("SK3628", Day, 1, 1) with { Complete = true }, Note("SK3628", Day, 2, 1), Note("SK3628", Day, 2, 3) with { Present = false }), SquareSize.Km1, _ => true);
        Assert.Equal([true, true, true], new[] { 1, 2, 3 }.Select(lists[0].LookedFor));
        Assert.Equal([true, false, true], new[] { 1, 2, 3 }.Select(lists[1].LookedFor));
    }

    [Fact]
    public void ALogPackedBeforeCompleteListsWereToldApartIsReadAsItWas()
    {
        // One entry in the form of before: square, day, recorder, taxon 3 present, count 1, each zigzag: 200, 10, 2, (3 << 1 | 1), 1.
        var entry = Assert.Single(VisitLog.Unpack([0x90, 0x03, 0x14, 0x04, 0x0E, 0x02]).Entries.ToArray());
        Assert.Equal(new VisitEntry(200, 10, 2, 3, true, 1), entry);
        Assert.Equal([0x90, 0x03, 0x14, 0x04, 0x0E, 0x02], VisitLog.Gather([entry]).Pack());
    }

    [Fact]
    public void PackingALogLosesNothingAndWhatIsTakenBackIsGone() =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9], Gen.Int[0, 3], Gen.Int[1, 4], Gen.Bool, Gen.Bool).Array[0, 50].Sample(rows =>
        {
            var entries = rows.Select(r => new VisitEntry(GridReference.Parse("SK3628").Code + r.Item1 * 1000, Day + r.Item2, r.Item3, r.Item4, r.Item5, 1, r.Item6)).ToArray();
            var log = VisitLog.Gather(entries.ToArray());
            var back = VisitLog.Gather(log.Entries.ToArray().Select(entry => entry with { Count = -entry.Count }).ToArray());
            return log.Entries.SequenceEqual(VisitLog.Unpack(log.Pack()).Entries) && VisitLog.Sum([log, back]).Entries.Length == 0;
        });

    private static VisitEntry Note(string square, int day, int recorder, int taxon) => new(GridReference.Parse(square).Code, day, recorder, taxon, true, 1);

    private static VisitLog Log(params VisitEntry[] entries) => VisitLog.Gather(entries);

    private static int[] Lengths(Effort effort, string square) =>
        [.. effort.In(GridReference.Parse(square), new(int.MinValue, int.MaxValue, "")).ToArray().Select(visit => visit.ListLength)];
}
