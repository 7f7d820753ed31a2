namespace RangeMap.Records.Tests;

public sealed class RowMeaningTests
{
    private const string Header = "species,date,gridref,individualCount,occurrenceStatus,caste,lifeStage,sex,identificationVerificationStatus";

    [Theory]
    [InlineData("3", 3)]
    [InlineData("3.0", 3)]
    [InlineData("0", 0)]
    [InlineData("3+", null)]
    [InlineData("c. 20", null)]
    [InlineData("many", null)]
    [InlineData("10-20", null)]
    [InlineData("2.5", null)]
    [InlineData("-1", null)]
    [InlineData("99999999999", null)]
    [InlineData("", null)]
    public void AVagueCountIsNoCountAndRefusesNothing(string text, int? count) => Assert.Equal(count, Row($"{text},,,,,").Count);

    [Theory]
    [InlineData("", "", true, Doubts.None)]
    [InlineData("0", "", false, Doubts.CountZero)]
    [InlineData("0", "present", true, Doubts.CountZero)]
    [InlineData("0", "absent", false, Doubts.None)]
    [InlineData("", "notDetected", false, Doubts.None)]
    [InlineData("2", "DETECTED", true, Doubts.None)]
    public void AbsenceIsToldFromTheStatusOrACountOfZero(string count, string status, bool present, Doubts doubts)
    {
        var record = Row($"{count},{status},,,,");
        Assert.Equal((present, doubts), (record.Present, record.Doubts));
    }

    [Fact]
    public void AStatusThatIsNotUnderstoodIsRefused() =>
        Assert.Equal("occurrenceStatus", Assert.Single(Reading.OfRow(Header, "Fictus ruber,1998,TQ38,,perhaps,,,,").Refusals).Field);

    [Theory]
    [InlineData("gyne", "adult", "queen")]
    [InlineData("", "Larvae", "larva")]
    [InlineData("", "third instar", "third instar")]
    [InlineData("drone", "", "male")]
    [InlineData("NULL", "", null)]
    public void StagesAreControlledWordsWhereRecognised(string caste, string stage, string? expected) => Assert.Equal(expected, Row($",,{caste},{stage},,").Stage);

    [Theory]
    [InlineData("F", "female")]
    [InlineData("\u2642", "male")]
    [InlineData("both", "female and male")]
    [InlineData("gynandromorph", "gynandromorph")]
    public void SexesAreControlledWordsWhereRecognised(string text, string expected) => Assert.Equal(expected, Row($",,,,{text},").Sex);

    [Theory]
    [InlineData("completeList", "yes", true)]
    [InlineData("isTaxonomicScopeFullyReported", "true", true)]
    [InlineData("dwc:isSamplingTargetCompletelyReported", "1", true)]
    [InlineData("complete checklist", "no", false)]
    [InlineData("completeList", "perhaps", false)]
    [InlineData("completeList", "", false)]
    [InlineData("samplingProtocol", "transect walk; complete list", true)]
    [InlineData("samplingProtocol", "Incomplete list", false)]
    [InlineData("samplingProtocol", "not a complete list", false)]
    [InlineData("samplingProtocol", "pan trap", false)]
    [InlineData("eventType", "complete checklist", true)]
    public void CompleteListsAreToldByTheirWords(string column, string text, bool complete)
    {
        var reading = Reading.OfRow($"species,date,gridref,{column}", $"Fictus ruber,1998-06-03,TQ38,{text}");

        Assert.Equal(complete, Assert.Single(reading.Records).OnCompleteList);
        Assert.Equal(complete ? 1 : 0, reading.Reader.Counts.OnCompleteLists);
        Assert.Equal(text == "perhaps" ? 1 : 0, reading.Reader.NotUnderstood.GetValueOrDefault(Term.CompleteList));
        Assert.Equal(complete, reading.Reader.Notes.Any(n => n.StartsWith("1 record stands on a complete list", StringComparison.Ordinal)));
    }

    [Fact]
    public void TheColumnBeatsTheProtocolAndADefaultHoldsForTheWholeFile()
    {
        Assert.False(Assert.Single(Reading.OfRow("species,date,gridref,completeList,samplingProtocol", "Fictus ruber,1998,TQ38,no,complete list").Records).OnCompleteList);
        var options = Reading.Options with { Mapping = new() { Defaults = new Dictionary<Term, string> { [Term.CompleteList] = "yes" } } };
        Assert.True(Assert.Single(Reading.OfRow("species,date,gridref", "Fictus ruber,1998,TQ38", options).Records).OnCompleteList);
    }

    [Theory]
    [InlineData("Accepted", ReviewStatus.Confirmed)]
    [InlineData("verified", ReviewStatus.Confirmed)]
    [InlineData("incorrect", ReviewStatus.Rejected)]
    [InlineData("unconfirmed", ReviewStatus.Unreviewed)]
    [InlineData("doubtful", ReviewStatus.Doubtful)]
    [InlineData("plausible", ReviewStatus.Unreviewed)]
    [InlineData("code 17", ReviewStatus.Unreviewed)]
    [InlineData("", ReviewStatus.Unreviewed)]
    public void TheReviewIsReadFromItsUsualWords(string text, ReviewStatus status) => Assert.Equal(status, Row($",,,,,{text}").Status);

    private static Record Row(string cells) => Assert.Single(Reading.OfRow(Header, $"Fictus ruber,1998,TQ38,{cells}").Records);
}
