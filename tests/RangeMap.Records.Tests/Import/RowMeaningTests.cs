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
