namespace RangeMap.Records;

/// <summary>Words for stage or caste and for sex, each with the ways in which recorders write it.</summary>
internal sealed class ControlledWords
{
    private readonly Dictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> _known;

    private ControlledWords(params (string Word, string[] Synonyms)[] words) =>
        _known = words.SelectMany(w => w.Synonyms.Prepend(w.Word).Select(s => (Written: s, w.Word)))
            .ToDictionary(w => w.Written, w => w.Word, StringComparer.OrdinalIgnoreCase)
            .GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Life stages and castes.</summary>
    public static ControlledWords Stages { get; } = new(
        ("queen", ["queens", "gyne", "gynes", "foundress", "queen(s)"]),
        ("worker", ["workers", "worker(s)", "w"]),
        ("male", ["males", "drone", "drones", "male(s)"]),
        ("female", ["females", "female(s)"]),
        ("egg", ["eggs", "ovum", "ova"]),
        ("larva", ["larvae", "larval", "caterpillar", "caterpillars", "grub", "grubs"]),
        ("pupa", ["pupae", "pupal", "chrysalis", "cocoon"]),
        ("nymph", ["nymphs", "nymphal"]),
        ("exuvia", ["exuviae", "exuvium"]),
        ("adult", ["adults", "imago", "imagines", "imagos", "ad"]),
        ("juvenile", ["juveniles", "immature", "immatures", "juv"]),
        ("nest", ["nests", "colony"]));

    /// <summary>Sexes.</summary>
    public static ControlledWords Sexes { get; } = new(
        ("female", ["females", "f", "\u2640", "queen", "worker"]),
        ("male", ["males", "m", "\u2642", "drone"]),
        ("female and male", ["male and female", "both", "males and females", "females and males", "mf", "fm", "m/f", "f/m", "female | male", "male | female"]),
        ("undetermined", ["unknown", "indeterminate", "not recorded", "u"]));

    /// <summary>The controlled word for a text, or null where it is not recognised.</summary>
    public string? Find(ReadOnlySpan<char> text) => _known.TryGetValue(text, out var word) ? word : null;
}
