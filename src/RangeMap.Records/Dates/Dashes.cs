namespace RangeMap.Records;

/// <summary>The dashes that word processors put in place of a hyphen.</summary>
internal static class Dashes
{
    /// <summary>The text with a hyphen for each of them.</summary>
    public static ReadOnlySpan<char> Plain(ReadOnlySpan<char> text)
    {
        if (text.IndexOfAnyInRange('\u2010', '\u2212') < 0)
            return text;
        var plain = text.ToArray();
        foreach (ref var c in plain.AsSpan())
            c = c is (>= '\u2010' and <= '\u2015') or '\u2212' ? '-' : c;
        return plain;
    }
}
