namespace RangeMap.Records.Tests;

public sealed class SentenceTests
{
    [Theory]
    [InlineData("Fictus ruber", "Fictus ruber.")]
    [InlineData("Fictus ruber agg.", "Fictus ruber agg.")]
    [InlineData("a specimen, or a photograph.", "a specimen, or a photograph.")]
    public void ASentenceHasOneFullStop(string words, string sentence) => Assert.Equal(sentence, Sentence.Ended(words));
}
