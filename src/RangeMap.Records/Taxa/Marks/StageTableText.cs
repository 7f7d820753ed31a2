namespace RangeMap.Records;

/// <summary>
/// The written forms of what a column says by stage: "worker 16-44; queen 9-42" for figures, "queen: tail white; worker: tail buff" for texts.
/// An entry without a stage holds for every stage.
/// </summary>
internal static class StageTableText
{
    internal delegate bool ValueReader<T>(ReadOnlySpan<char> text, out T value);

    /// <summary>Reads figures; on failure <paramref name="fault"/> is the entry that was not understood.</summary>
    public static bool TryReadFigures<T>(string text, ValueReader<T> read, out StageTable<T> table, out string? fault)
    {
        var entries = new List<StageEntry<T>>();
        fault = null;
        table = new([]);
        foreach (var entry in text.Split([';', '|'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var (stage, figures) = SplitBeforeFigures(entry);
            if (!read(figures, out var value) || entries.Exists(e => e.Stage == stage))
            {
                fault = entry;
                return false;
            }

            entries.Add(new(stage, value));
        }

        table = new(entries);
        return true;
    }

    /// <summary>Reads texts: each begins with a stage and a colon, and a text without one goes on with the entry before it.</summary>
    public static StageTable<string> ReadTexts(string text)
    {
        var entries = new List<StageEntry<string>>();
        foreach (var part in text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var colon = part.IndexOf(':', StringComparison.Ordinal);
            var stage = colon > 0 ? ControlledWords.Stages.Find(part.AsSpan(0, colon).Trim()) : null;
            if (stage is not null)
                entries.Add(new(stage, part[(colon + 1)..].Trim()));
            else if (entries.Count == 0)
                entries.Add(new(null, part));
            else
                entries[^1] = entries[^1] with { Value = $"{entries[^1].Value}; {part}" };
        }

        return new(entries);
    }

    /// <summary>The written form of figures.</summary>
    public static string WriteFigures<T>(StageTable<T> table) =>
        string.Join("; ", table.Entries.Select(e => e.Stage is null ? $"{e.Value}" : $"{e.Stage} {e.Value}"));

    /// <summary>The written form of texts.</summary>
    public static string WriteTexts(StageTable<string> table) =>
        string.Join("; ", table.Entries.Select(e => e.Stage is null ? e.Value : $"{e.Stage}: {e.Value}"));

    /// <summary>The controlled word for a stage, else the word in small letters.</summary>
    public static string StageWord(ReadOnlySpan<char> text) => ControlledWords.Stages.Find(text) ?? text.ToString().ToLowerInvariant();

    private static (string? Stage, string Figures) SplitBeforeFigures(string entry)
    {
        var at = entry.AsSpan().IndexOfAnyInRange('0', '9');
        if (at < 0)
            return (null, entry);
        foreach (var word in (ReadOnlySpan<string>)["to ", "from "])
        {
            if (entry.AsSpan(0, at).EndsWith(word, StringComparison.OrdinalIgnoreCase) && (at == word.Length || entry[at - word.Length - 1] is ' ' or ':'))
                at -= word.Length;
        }

        var stage = entry.AsSpan(0, at).Trim(" :");
        return (stage.IsEmpty ? null : StageWord(stage), entry[at..]);
    }
}
