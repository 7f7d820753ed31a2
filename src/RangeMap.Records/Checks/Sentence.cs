namespace RangeMap.Records;

/// <summary>Sentences that end with words of others.</summary>
internal static class Sentence
{
    /// <summary>Ends with one full stop, also after "agg." or a text that brought its own.</summary>
    public static string Ended(string words) => words.EndsWith('.') ? words : words + ".";
}
