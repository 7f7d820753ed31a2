namespace RangeMap.Records;

/// <summary>Tells the separator of a delimited file from its header line.</summary>
internal static class SeparatorGuess
{
    private const string Candidates = ",;\t|";

    /// <summary>The candidate that stands most often outside quotation marks; a comma if none does.</summary>
    public static char Of(ReadOnlySpan<char> header)
    {
        Span<int> counts = stackalloc int[Candidates.Length];
        var quoted = false;
        foreach (var c in header)
        {
            if (c == '"')
                quoted = !quoted;
            var which = quoted ? -1 : Candidates.IndexOf(c, StringComparison.Ordinal);
            if (which >= 0)
                counts[which]++;
        }

        var best = 0;
        for (var i = 1; i < counts.Length; i++)
            best = counts[i] > counts[best] ? i : best;
        return Candidates[best];
    }
}
