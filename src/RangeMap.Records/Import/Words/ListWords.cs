namespace RangeMap.Records;

/// <summary>Words that tell whether the list of a visit has all taxa of the group that were found.</summary>
internal static class ListWords
{
    private static readonly string[] Complete = ["yes", "y", "true", "1", "complete", "complete list", "complete checklist", "full", "full list", "all"];
    private static readonly string[] Incomplete = ["no", "n", "false", "0", "incomplete", "incomplete list", "incomplete checklist", "partial", "casual", "casual record", "ad hoc", "incidental"];
    private static readonly string[] Not = ["not", "not a", "no", "non", "in"];
    private static readonly string[] InProtocols = ["complete list", "complete checklist", "complete species list", "full list", "full species list"];

    /// <summary>True or false as the cell says; null where it is empty or not recognised.</summary>
    public static bool? Read(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty)
            return null;
        return IsOneOf(text, Complete) ? true : IsOneOf(text, Incomplete) ? false : null;
    }

    /// <summary>True when the words about how was looked speak of a complete list, and not of an incomplete one.</summary>
    public static bool IsNamedIn(ReadOnlySpan<char> protocol)
    {
        foreach (var words in protocol.IsEmpty ? [] : InProtocols)
        {
            var at = protocol.IndexOf(words, StringComparison.OrdinalIgnoreCase);
            if (at >= 0 && !EndsWithNot(protocol[..at].TrimEnd(" -")))
                return true;
        }

        return false;
    }

    private static bool EndsWithNot(ReadOnlySpan<char> before)
    {
        foreach (var word in Not)
        {
            if (before.EndsWith(word, StringComparison.OrdinalIgnoreCase) && (before.Length == word.Length || !char.IsLetter(before[^(word.Length + 1)])))
                return true;
        }

        return false;
    }

    private static bool IsOneOf(ReadOnlySpan<char> text, string[] words)
    {
        foreach (var word in words)
        {
            if (text.Equals(word, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }
}
