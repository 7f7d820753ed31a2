namespace RangeMap.Records;

/// <summary>How closely an entry of the taxon list fits what a record says about stage and sex; the greater the closer.</summary>
public enum StageFit
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>The entry holds for every stage.</summary>
    EveryStage,

    /// <summary>The entry is about a stage that the record's wider word takes in: worker, where the record says female.</summary>
    Narrower,

    /// <summary>The entry's wider word takes in the record's: adult, where the record says worker.</summary>
    Wider,

    /// <summary>The same word.</summary>
    Same,
}

/// <summary>Which words for stage, caste and sex take in which others.</summary>
public static class StageKind
{
    private static readonly Dictionary<string, string[]> TakesIn = new(StringComparer.OrdinalIgnoreCase)
    {
        ["adult"] = ["queen", "worker", "male", "female"],
        ["female"] = ["queen", "worker"],
        ["juvenile"] = ["egg", "larva", "pupa", "nymph"],
    };

    /// <summary>
    /// The word under which a record's stage is looked up: its stage, or its sex where the stage is not stated or says only
    /// adult; null where the record says neither.
    /// </summary>
    public static string? KeyOf(string? stage, string? sex) =>
        (stage is null or "adult") && (sex is "female" or "male") ? sex : stage;

    /// <summary>True when the first word is a wider one than the second.</summary>
    public static bool Covers(string wide, string narrow) => MayTakeIn(wide) && TakesIn.TryGetValue(wide, out var words) && words.Contains(narrow, StringComparer.OrdinalIgnoreCase);

    // Asked several times a row, mostly about words that take in none.
    private static bool MayTakeIn(string word) => word.Length > 0 && (char)(word[0] | 0x20) is ('a' or 'f' or 'j');

    /// <summary>How an entry fits a key of <see cref="KeyOf"/>; a record without a key is fitted by every entry.</summary>
    public static StageFit Fit(string? entry, string? key)
    {
        if (key is null)
            return StageFit.Same;
        if (entry is null)
            return StageFit.EveryStage;
        if (entry.Equals(key, StringComparison.OrdinalIgnoreCase))
            return StageFit.Same;
        return Covers(entry, key) ? StageFit.Wider : Covers(key, entry) ? StageFit.Narrower : StageFit.None;
    }

    /// <summary>The sex that goes with a caste; null for a stage that both sexes have.</summary>
    public static string? SexOf(string? stage) => stage switch
    {
        "queen" or "worker" or "female" => "female",
        "male" => "male",
        _ => null,
    };
}
