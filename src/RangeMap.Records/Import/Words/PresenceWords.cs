namespace RangeMap.Records;

/// <summary>Words of occurrenceStatus: the terms of Darwin Core before and since 2026, and common ways of writing them.</summary>
internal static class PresenceWords
{
    private static readonly string[] Absent = ["absent", "notDetected", "not detected", "not found", "absence", "none", "no", "n", "false"];
    private static readonly string[] Present = ["present", "detected", "found", "presence", "yes", "y", "true", "common", "irregular", "rare"];

    /// <summary>True or false as the text says; null where it is empty or not recognised.</summary>
    public static bool? Read(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty)
            return null;
        return IsOneOf(text, Present) ? true : IsOneOf(text, Absent) ? false : null;
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
