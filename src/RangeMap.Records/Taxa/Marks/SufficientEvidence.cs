namespace RangeMap.Records;

/// <summary>What suffices to name a taxon: words for people, and the kinds of evidence found in them.</summary>
/// <param name="Text">As the list has it, such as "a specimen, or a photograph of the face".</param>
/// <param name="Kinds">The kinds of evidence that the text names; none when it names none that is known, and then no record can be checked by it.</param>
public sealed record SufficientEvidence(string Text, IReadOnlyList<string> Kinds)
{
    private static readonly Dictionary<string, string[]> ShowsAlso = new(StringComparer.Ordinal)
    {
        ["dna"] = ["microscopy", "specimen", "in the hand", "photograph", "video", "sound", "sighting"],
        ["microscopy"] = ["specimen", "in the hand", "photograph", "video", "sighting"],
        ["specimen"] = ["in the hand", "photograph", "video", "sighting"],
        ["photograph"] = ["sighting"],
        ["video"] = ["sighting"],
        ["in the hand"] = ["sighting"],
    };

    /// <summary>Finds the kinds that a text names, in the singular or plural, of up to two words.</summary>
    public static SufficientEvidence From(string text)
    {
        var words = text.Split([' ', ',', '.', ':', '(', ')', '/', '|', ';'], StringSplitOptions.RemoveEmptyEntries);
        var pairs = words.Zip(words.Skip(1), (a, b) => $"{a} {b}");
        return new(text, [.. words.Concat(pairs).Select(KindOf).OfType<string>().Distinct()]);
    }

    /// <summary>True when a record's evidence is of a kind that suffices, or of one that shows at least as much.</summary>
    public bool IsMetBy(string? evidence) =>
        evidence is not null && (Suffices(evidence) || (ControlledWords.Evidence.Find(evidence) is null && From(evidence).Kinds.Any(Suffices)));

    private bool Suffices(string kind)
    {
        foreach (var asked in Kinds)
        {
            if (asked == kind || (ShowsAlso.TryGetValue(kind, out var also) && also.Contains(asked)))
                return true;
        }

        return false;
    }

    /// <summary>In a sentence "seen" and the like speak of marks, not of a sighting.</summary>
    private static string? KindOf(string words) =>
        ControlledWords.Evidence.Find(words) is { } kind && (kind != "sighting" || words.StartsWith("sight", StringComparison.OrdinalIgnoreCase)) ? kind : null;
}
