namespace RangeMap.Records;

/// <summary>Words for stage or caste, sex, evidence and behaviour, each with the ways in which recorders write it.</summary>
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

    /// <summary>
    /// What a record rests on. The words of Darwin Core's basisOfRecord that say less than these are understood as the closest one.
    /// </summary>
    public static ControlledWords Evidence { get; } = new(
        ("specimen", ["specimens", "voucher", "voucher specimen", "preserved specimen", "preservedspecimen", "collected", "material sample", "materialsample", "material citation", "materialcitation"]),
        ("photograph", ["photographs", "photo", "photos", "picture", "pictures", "image", "images", "still image", "stillimage"]),
        ("video", ["videos", "film", "moving image", "movingimage"]),
        ("sound", ["sound recording", "audio", "recording", "bat detector", "acoustic"]),
        ("dna", ["dna barcode", "barcode", "edna", "sequence", "genetic"]),
        ("microscopy", ["microscope", "dissection", "dissected", "genitalia", "genital dissection"]),
        ("in the hand", ["in hand", "caught and released", "netted", "examined in the hand", "examined in hand"]),
        ("sighting", ["sightings", "seen", "field observation", "human observation", "humanobservation", "observation", "observed", "visual", "sight record"]),
        ("trap", ["trapped", "machine observation", "machineobservation", "camera trap"]),
        ("field sign", ["signs", "field signs", "mine", "gall", "exuviae", "feeding signs", "tracks"]),
        ("literature", ["published", "publication"]));

    /// <summary>A few things that an animal does.</summary>
    public static ControlledWords Behaviours { get; } = new(
        ("foraging", ["feeding", "visiting flowers", "collecting pollen", "collecting nectar", "nectaring"]),
        ("nesting", ["at nest", "nest building", "entering nest", "in nest"]),
        ("nest searching", ["prospecting", "searching for a nest", "nest-searching", "nest seeking"]),
        ("mating", ["in cop", "in cop.", "copulating", "copulation", "courtship", "mating pair"]),
        ("egg laying", ["ovipositing", "oviposition", "laying", "laying eggs", "egg-laying"]),
        ("flying", ["in flight", "flight", "flying past"]),
        ("patrolling", ["patrol", "territorial"]),
        ("resting", ["basking", "at rest", "roosting", "torpid"]),
        ("hibernating", ["hibernation", "overwintering", "hibernaculum"]),
        ("dead", ["found dead", "corpse"]));

    /// <summary>The controlled word for a text, or null where it is not recognised.</summary>
    public string? Find(ReadOnlySpan<char> text) => _known.TryGetValue(text, out var word) ? word : null;
}
