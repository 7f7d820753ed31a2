using RangeMap.Grids;
using RangeMap.TestKit;

namespace RangeMap.Records.Tests;

public sealed class FileChecksTests
{
    private long _row;

    [Fact]
    public void ASecondRecordOfTheSameIsADuplicateAndAnotherStageIsNot()
    {
        var checks = new FileChecks(Checking.Context);

        Assert.Equal(Doubts.None, checks.Find(Seen("C", stage: "worker")));
        Assert.Equal(Doubts.DuplicateRecord, checks.Find(Seen("C", stage: "worker")));
        Assert.Equal(Doubts.None, checks.Find(Seen("C", stage: "queen")));
        Assert.Equal(Doubts.None, checks.Find(Seen("D", stage: "worker")));
        Assert.Equal(Doubts.None, checks.Find(Seen("C", stage: "worker", day: "2010-06-04")));
        Assert.Equal(Doubts.None, checks.Find(Seen("C", stage: "worker", square: "TQ39")));
        Assert.Equal(Doubts.None, checks.Find(Seen("C", stage: "worker", recorder: "B. Invented")));
        Assert.Equal(Doubts.DuplicateRecord, checks.Find(Seen("C", stage: "worker", recorder: " b.  invented ")));
    }

    [Theory]
    [InlineData("anonymous")]
    [InlineData("Various")]
    [InlineData(null)]
    public void NobodyInParticularHasNoDuplicatesAndIsNowhere(string? recorder)
    {
        var checks = new FileChecks(Checking.Context);

        Assert.Equal(Doubts.None, checks.Find(Seen("C", recorder: recorder)));
        Assert.Equal(Doubts.None, checks.Find(Seen("C", recorder: recorder)));
        Assert.Equal(Doubts.None, checks.Find(Seen("C", recorder: recorder, square: "HP51")));
    }

    [Fact]
    public void VagueDatesAreNotCompared()
    {
        var checks = new FileChecks(Checking.Context);

        Assert.Equal(Doubts.None, checks.Find(Seen("C", day: "2010-06-01/2010-06-30")));
        Assert.Equal(Doubts.None, checks.Find(Seen("C", day: "2010-06-01/2010-06-30", square: "HP51")));
    }

    [Fact]
    public void WhatTheStoreHoldsIsComparedButForTheRecordItself()
    {
        var record = Seen("C");
        var checks = new FileChecks(Checking.Context);
        checks.Prime(ComparedRecord.Of(record));

        Assert.Equal(Doubts.None, checks.Find(record));
        Assert.Equal(Doubts.DuplicateRecord, checks.Find(Seen("C")));
    }

    [Theory]
    [InlineData("TQ38", "NT27", true)]
    [InlineData("TQ38", "SP50", false)]
    [InlineData("TQ38", "TQ3838", false)]
    [InlineData("TQ38", "O13", true)]
    [InlineData("SH28", "O24", false)]
    public void TwoPlacesOfADayAreComparedAcrossGrids(string first, string second, bool found)
    {
        var checks = new FileChecks(Checking.Context);
        checks.Find(Seen("C", square: first));

        Assert.Equal(found ? Doubts.TwoFarPlaces : Doubts.None, checks.Find(Seen("D", square: second)));
        Assert.Equal(Doubts.None, checks.Find(Seen("D", square: second, day: "2010-06-04")));
    }

    // TQ38 and NT27 lie 200 km apart to the east and 480 km to the north: 520 km.
    [Fact]
    public void TheWordsNameTheOtherPlace()
    {
        var other = Seen("C", square: "NT27");
        var context = Checking.Context with { OthersOfDay = _ => [other] };

        Assert.Equal(
            "On 3 Jun 2010 A. Invented is also recorded in NT27, 520 km from TQ38.",
            Checking.Words(Seen("D"), Doubts.TwoFarPlaces, context));
        Assert.Equal(
            "A. Invented has another record of Species C in NT27 on 3 Jun 2010.",
            Checking.Words(Seen("C", square: "NT27"), Doubts.DuplicateRecord, context));
    }

    [Fact]
    public void ANameThatSpansMoreYearsThanAPersonRecordsIsInDoubt()
    {
        var checks = new FileChecks(Checking.Context);

        Assert.Equal(Doubts.None, checks.Find(Seen("C", day: "1998-06-03")));
        Assert.Equal(Doubts.RecorderImplausible, checks.Find(Seen("C", day: "1898-06-03")));
        Assert.Equal(Doubts.None, checks.Find(Seen("C", day: "1999-06-03")));
        Assert.Equal(Doubts.None, checks.Find(Seen("C", day: "1900-01-01/1999-12-31")));
        Assert.Equal(Doubts.None, checks.Find(Seen("C", day: "1898-06-04", recorder: "B. Invented")));
    }

    [Fact]
    public void WhenTheFirstDateWasTheOddOneTheRestIsNotInDoubtForLong()
    {
        var checks = new FileChecks(Checking.Context);
        var doubts = Enumerable.Range(0, 6).Select(i => checks.Find(Seen("C", day: i == 0 ? "1898-06-03" : $"199{i}-06-03"))).ToList();

        Assert.Equal([Doubts.None, Doubts.RecorderImplausible, Doubts.None, Doubts.None, Doubts.None, Doubts.None], doubts);
    }

    [Fact]
    public void ManyRecordsAtTheCentreOfATownLookFilledIn()
    {
        var towns = new TownCentres([("Inventon", new LatLon(51.50001, -0.1)), ("Elsewhere", new LatLon(52, 0))]);
        var checks = new FileChecks(Checking.Context with { Town = towns.At, Limits = new() { TownCentreRecords = 3 } });
        Doubts At(double latitude, int day) => checks.Find(Seen("C", day: $"2010-06-{day:00}") with { Point = new LatLon(latitude, -0.1) });

        Assert.Equal([Doubts.None, Doubts.None, Doubts.None, Doubts.PlaceDefault], [At(51.5, 1), At(51.5002, 2), At(51.5, 3), At(51.50001, 4)]);
    }

    [Fact]
    public void HashesKeepTheirFirstValueBeyondEveryGrowth()
    {
        var tags = new TaggedHashes();
        var squares = new FirstSquares();
        for (uint i = 0; i < 200_000; i++)
        {
            Assert.False(tags.TryGetOrAdd(MixedHash.Of(i, 7), (ushort)i, out _));
            Assert.Equal(i, squares.GetOrAdd(MixedHash.Of(i, 7), i));
        }

        for (uint i = 0; i < 200_000; i++)
        {
            Assert.True(tags.TryGetOrAdd(MixedHash.Of(i, 7), 1, out var first));
            Assert.Equal((ushort)i, first);
            Assert.Equal(i, squares.GetOrAdd(MixedHash.Of(i, 7), 1));
        }
    }

    [Fact]
    public void AReaderAsksAllChecks()
    {
        const string text = "occurrenceID,species,date,gridref,recorder\n1,Fictus ruber,1998-06-03,TQ38,A. Invented\n2,Fictus ruber,1998-06-03,TQ38,A. Invented\n3,Fictus albus,1998-06-03,NT27,A. Invented\n";
        var options = Reading.Options with { FileChecks = new FileChecks(Checking.Context) };

        Assert.Equal([Doubts.None, Doubts.DuplicateRecord, Doubts.TwoFarPlaces], Reading.Of(text, options).Records.Select(r => r.Doubts));
        Assert.Equal([Doubts.None, Doubts.None, Doubts.None], Reading.Of(text).Records.Select(r => r.Doubts));
    }

    [Fact]
    public void AnotherTaxonListIsAChangeOfContentAndOtherSurroundingsAreNot()
    {
        const string text = "species,date,gridref\nFictus ruber,1998-06-03,TQ38\n";
        var plain = Assert.Single(Reading.Of(text).Records);
        var atSea = Assert.Single(Reading.Of(text, Reading.Options with { Checks = new() { Sea = _ => 3 } }).Records);
        var later = new Taxon("1", "Fictus ruber") { FirstYear = 2001 };
        var early = Assert.Single(Reading.Of(text, taxa: new([later])).Records);

        Assert.Equal((Doubts.AtSea, plain.Content), (atSea.Doubts, atSea.Content));
        Assert.Equal(Doubts.BeforeFirstYear, early.Doubts);
        Assert.NotEqual(plain.Content, early.Content);
    }

    private Record Seen(string letter, string? stage = null, string day = "2010-06-03", string square = "TQ38", string? recorder = "A. Invented")
    {
        var row = ++_row;
        return Some.Record(GridReference.Parse(square), Some.Days(day), SomeSpecies.Get(letter), row) with { Stage = stage, Recorder = recorder };
    }
}
