namespace RangeMap.Records;

/// <summary>Stages, castes and sexes in a sentence.</summary>
internal static class StagePhrase
{
    /// <summary>"workers", "larvae"; "every stage" for null.</summary>
    public static string Plural(string? stage) => stage switch
    {
        null => "every stage",
        "queen" or "worker" or "male" or "female" or "egg" or "nymph" or "adult" or "juvenile" or "nest" => stage + "s",
        "larva" or "pupa" or "exuvia" => stage + "e",
        _ => $"the stage \"{stage}\"",
    };

    /// <summary>"worker"; "individual" for null.</summary>
    public static string Singular(string? stage) => stage ?? "individual";

    /// <summary>"a, b and c".</summary>
    public static string Joined(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}";
}
