namespace RangeMap.Records.Tests;

public sealed class TaxonMarksTests
{
    private static readonly Dictionary<string, string> Full = new()
    {
        ["season"] = "worker 16-44; queen 9-42",
        ["lengthMm"] = "worker 11-17; male to 16; queen from 20.5",
        ["stages"] = "queen; worker; male",
        ["knownArea"] = "Westland; Southland; not Far Isle",
        ["confusedWith"] = "2; 7",
        ["marks"] = "large and black; queen: tail white; or buff; worker: tail buff",
        ["evidence"] = "worker: a specimen, or a photograph of the tail; queen: sighting",
        ["seasonMarginWeeks"] = "1",
        ["lengthMarginMm"] = "0.5",
        ["areaMarginKm"] = "20",
        ["shelf"] = "B7",
    };

    [Fact]
    public void TheColumnsAreUnderstood()
    {
        var marks = TaxonMarksText.Read(Full, out var fault);

        Assert.Null(fault);
        Assert.Equal(["worker", "queen"], marks.Season.Entries.Select(e => e.Stage));
        Assert.Equal([new(11, 17), new(0, 16), new(20.5, double.PositiveInfinity)], marks.LengthMm.Entries.Select(e => e.Value));
        Assert.Equal(["queen", "worker", "male"], marks.Stages);
        Assert.Equal(["2", "7"], marks.ConfusedWith);
        Assert.Equal(["Westland", "Southland"], marks.KnownArea.Within);
        Assert.Equal(["Far Isle"], marks.KnownArea.NotIn);
        Assert.Equal([(null, "large and black"), ("queen", "tail white; or buff"), ("worker", "tail buff")], marks.Marks.Entries.Select(e => (e.Stage, e.Value)));
        Assert.Equal(["specimen", "photograph"], marks.Evidence.Entries[0].Value.Kinds);
        Assert.Equal((1d, 0.5, 20d), (marks.SeasonMarginWeeks, marks.LengthMarginMm, marks.AreaMarginKm));
    }

    [Fact]
    public void WhatIsWrittenReadsBackAsTheSame()
    {
        var marks = TaxonMarksText.Read(Full, out _);
        var written = TaxonMarksText.Write(marks);
        var again = TaxonMarksText.Write(TaxonMarksText.Read(written, out var fault));

        Assert.Null(fault);
        Assert.Equal(written, again);
        Assert.Equal(Full.Where(c => c.Key != "shelf"), written);
    }

    [Theory]
    [InlineData("season", "worker 16-60", "worker 16-60")]
    [InlineData("season", "queen 9-42; worker soon", "worker soon")]
    [InlineData("season", "queen 9-42; gyne 10-20", "gyne 10-20")]
    [InlineData("lengthMm", "worker 17-11", "worker 17-11")]
    [InlineData("lengthMm", "large", "large")]
    [InlineData("areaMarginKm", "far", "far")]
    public void AFaultNamesThePartThatWasNotUnderstood(string column, string text, string value)
    {
        TaxonMarksText.Read(new Dictionary<string, string> { [column] = text }, out var fault);

        Assert.Equal((column, value), (fault!.Column, fault.Value));
        Assert.Contains("Write", fault.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("worker", null, "16-44")]
    [InlineData("adult", null, "16-44|9-42")]
    [InlineData("female", null, "16-44|9-42")]
    [InlineData(null, "female", "16-44|9-42")]
    [InlineData(null, null, "16-44|9-42")]
    [InlineData(null, "male", "")]
    [InlineData("larva", "female", "")]
    public void ARecordFindsTheSeasonOfItsStage(string? stage, string? sex, string weeks) =>
        Assert.Equal(weeks, string.Join('|', TaxonMarksText.Read(Full, out _).Season.For(stage, sex).Select(e => e.Value)));

    [Theory]
    [InlineData("photograph", true)]
    [InlineData("specimen", true)]
    [InlineData("dna", true)]
    [InlineData("sighting", false)]
    [InlineData("two photos and a note", true)]
    [InlineData("a feeling", false)]
    [InlineData(null, false)]
    public void EvidenceSufficesIfItShowsAtLeastAsMuch(string? evidence, bool met) =>
        Assert.Equal(met, SufficientEvidence.From("a photograph of the tail, its hairs seen from above").IsMetBy(evidence));

    [Fact]
    public void AListWithAFaultInAMarkRefusesThatRowWithItsPlace()
    {
        using var stream = new MemoryStream("taxonID,scientificName,Season\n1,Fictus ruber,worker 16-44\n2,Fictus albus,worker 70-80\n"u8.ToArray());
        var reading = TaxonListReader.Read(stream);

        var refusal = Assert.Single(reading.Refusals);
        Assert.Equal((3, "season", "worker 70-80"), (refusal.Line, refusal.Field, refusal.Value));
        Assert.True(Assert.Single(reading.List.Taxa).Marks.Season.Entries[0].Value.Holds(16));
        Assert.Empty(reading.UnknownColumns);
    }
}
