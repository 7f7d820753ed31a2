namespace RangeMap.Change;

/// <summary>
/// The scenario of the demonstration and of validation. Everything in it is invented: no such families, species, names
/// or recorders exist, and no figure describes a real insect. The plants are everyday names of common plants.
/// </summary>
public static class InventedScenario
{
    /// <summary>The group of species without castes.</summary>
    public const string Glimmers = "glimmers";

    /// <summary>The group of species that live in nests.</summary>
    public const string EmberWings = "ember-wings";

    /// <summary>The aggregate of the pair that is hard to tell apart.</summary>
    public const string TwinAggregate = "Cindrava gemella agg.";

    private const string TwinEvidence = "a specimen, or a photograph of the face and of the second wing cell";

    /// <summary>All species; a species is known by its index here.</summary>
    public static IReadOnlyList<InventedSpecies> Species { get; } =
    [
        .. Actors(),
        Solitary("Velurqua aurata", "golden glimmer", 0.93, 0.5, 0.4, (16, 30), (10, 12)),
        Solitary("Velurqua littoralis", "shore glimmer", 0.4, 0.3, 0.46, (16, 30), (8, 11)),
        Solitary("Velurqua borealis", "northern glimmer", 0.03, -1.0, 0.26, (16, 30), (12, 14)),
        Solitary("Velurqua nitida", "shining glimmer", 0.48, -0.6, 0.2, (22, 38), (7, 10)),
        Solitary("Velurqua minuta", "lesser glimmer", 0.06, -0.4, 0.42, (18, 36), (12, 16)),
        Solitary("Velurqua cinerea", "ashen glimmer", 0.55, -0.0, 0.17, (16, 30), (7, 9)),
        Solitary("Velurqua sylvatica", "wood glimmer", 0.1, 0.6, 0.18, (18, 36), (8, 11)),
        Solitary("Ostraphyx montana", "hill sheenwing", 0.62, -0.9, 0.32, (18, 36), (7, 11)),
        Solitary("Ostraphyx autumnalis", "autumn sheenwing", 0.15, -0.3, 0.49, (30, 44), (10, 13)),
        Solitary("Ostraphyx fasciata", "banded sheenwing", 0.7, -0.6, 0.28, (18, 36), (8, 10)),
        Solitary("Ostraphyx robusta", "stout sheenwing", 0.2, -0.2, 0.43, (16, 30), (12, 16)),
        Solitary("Ostraphyx arenaria", "sand sheenwing", 0.78, 0.7, 0.15, (22, 38), (8, 11)),
        Solitary("Ostraphyx littoralis", "shore sheenwing", 0.27, 0.3, 0.19, (26, 40), (7, 9)),
        Solitary("Ostraphyx borealis", "northern sheenwing", 0.85, -1.0, 0.48, (22, 38), (10, 12)),
        Solitary("Quillvena vernalis", "spring quillfly", 0.33, 0.1, 0.28, (12, 24), (10, 14)),
        Solitary("Quillvena maculata", "spotted quillfly", 0.93, 0.5, 0.29, (18, 36), (12, 14)),
        Solitary("Quillvena gracilis", "slender quillfly", 0.4, -0.4, 0.21, (26, 40), (8, 12)),
        Solitary("Quillvena paludis", "marsh quillfly", 0.03, -0.2, 0.32, (26, 40), (5, 9)),
        Solitary("Quillvena pallida", "pale quillfly", 0.48, 0.4, 0.42, (22, 38), (5, 8)),
        Solitary("Quillvena autumnalis", "autumn quillfly", 0.06, 0.6, 0.15, (30, 44), (8, 12)),
        Solitary("Quillvena fasciata", "banded quillfly", 0.55, 0.2, 0.47, (22, 38), (8, 12)),
        Solitary("Braskunda australis", "southern flicker", 0.1, 0.9, 0.24, (22, 38), (8, 10)),
        Solitary("Braskunda obscura", "dusky flicker", 0.62, 0.4, 0.36, (22, 38), (10, 12)),
        Solitary("Braskunda ericae", "heath flicker", 0.15, -0.6, 0.15, (26, 40), (5, 7)),
        Solitary("Braskunda cinerea", "ashen flicker", 0.7, 0.4, 0.25, (22, 38), (10, 14)),
        Solitary("Braskunda sylvatica", "wood flicker", 0.2, -0.1, 0.14, (16, 30), (10, 13)),
        Solitary("Braskunda maculata", "spotted flicker", 0.78, 0.5, 0.17, (18, 36), (10, 12)),
        Solitary("Braskunda gracilis", "slender flicker", 0.27, -0.4, 0.26, (16, 30), (10, 13)),
        Solitary("Tindorqua nitida", "shining tinderfly", 0.85, -0.4, 0.47, (18, 36), (12, 15)),
        Solitary("Tindorqua minuta", "lesser tinderfly", 0.33, 0.6, 0.38, (22, 38), (10, 13)),
        Solitary("Tindorqua aurata", "golden tinderfly", 0.93, 0.5, 0.27, (18, 36), (5, 8)),
        Solitary("Tindorqua littoralis", "shore tinderfly", 0.4, 0.3, 0.32, (18, 36), (10, 13)),
        Solitary("Tindorqua borealis", "northern tinderfly", 0.03, -1.0, 0.31, (22, 38), (5, 8)),
        Solitary("Tindorqua obscura", "dusky tinderfly", 0.48, 0.3, 0.37, (22, 38), (8, 12)),
        Solitary("Tindorqua ericae", "heath tinderfly", 0.06, -0.6, 0.23, (26, 40), (8, 12)),
        Solitary("Melvathra robusta", "stout honeyshade", 0.55, 0.3, 0.48, (22, 38), (7, 11)),
        Solitary("Melvathra arenaria", "sand honeyshade", 0.1, 0.7, 0.3, (22, 38), (8, 12)),
        Solitary("Melvathra montana", "hill honeyshade", 0.62, -0.9, 0.23, (22, 38), (8, 11)),
        Solitary("Melvathra autumnalis", "autumn honeyshade", 0.15, 0.2, 0.4, (30, 44), (10, 13)),
        Solitary("Melvathra fasciata", "banded honeyshade", 0.7, 0.6, 0.19, (26, 40), (8, 11)),
        Solitary("Melvathra minuta", "lesser honeyshade", 0.2, 0.1, 0.32, (18, 36), (7, 10)),
        Solitary("Melvathra aurata", "golden honeyshade", 0.78, 0.5, 0.3, (16, 30), (10, 12)),
        Solitary("Ysolphid paludis", "marsh mistwing", 0.27, -0.2, 0.48, (26, 40), (8, 12)),
        Solitary("Ysolphid pallida", "pale mistwing", 0.85, 0.1, 0.45, (22, 38), (5, 7)),
        Solitary("Ysolphid vernalis", "spring mistwing", 0.33, -0.4, 0.29, (12, 24), (7, 9)),
        Solitary("Ysolphid maculata", "spotted mistwing", 0.93, 0.4, 0.19, (16, 30), (10, 12)),
        Solitary("Ysolphid gracilis", "slender mistwing", 0.4, -0.4, 0.46, (16, 30), (8, 10)),
        Solitary("Ysolphid arenaria", "sand mistwing", 0.03, 0.7, 0.33, (26, 40), (10, 13)),
        Solitary("Ysolphid montana", "hill mistwing", 0.48, -0.9, 0.35, (18, 36), (7, 11)),
        Social("Cindrava rufa", "red ember-wing", 0.85, 0.2, 0.45, (14, 42), (11, 16)),
        Social("Cindrava silvestra", "forest ember-wing", 0.55, -0.1, 0.4, (16, 40), (10, 15)),
        Social("Cindrava campi", "field ember-wing", 0.27, 0.4, 0.35, (15, 41), (11, 15)),
        Social("Cindrava collina", "ridge ember-wing", 0.06, -0.7, 0.3, (18, 38), (10, 14)),
        Social("Cindrava ripensis", "bank ember-wing", 0.78, 0, 0.3, (17, 40), (9, 13)),
        Social("Cindrava hortorix", "garden ember-wing", 0.48, 0.6, 0.4, (13, 44), (12, 17)),
        Social("Cindrava tristis", "sombre ember-wing", 0.2, -0.3, 0.2, (20, 38), (9, 13)),
    ];

    /// <summary>Plants that the insects visit.</summary>
    public static IReadOnlyList<string> Plants { get; } =
        ["bramble", "ivy", "hogweed", "thistle", "heather", "willow", "dandelion", "knapweed", "angelica", "buddleia"];

    private static IEnumerable<InventedSpecies> Actors()
    {
        yield return Social("Cindrava adventa", "harbour ember-wing", 0.9, 0.5, 0.5, (15, 45), (12, 18)) with
        {
            Role = InventedRole.Arriving,
            Marks = "thorax all dark; last two segments amber; worker larger than that of the red ember-wing",
            Evidence = "a photograph of the thorax from above",
        };
        yield return Solitary("Velurqua viatrix", "wayfaring glimmer", 0.85, 0.4, 0.45, (20, 40), (9, 12)) with
        {
            Role = InventedRole.Stalling,
            Marks = "a pale bar across each wing, unbroken",
        };
        yield return Solitary("Ostraphyx nivalis", "snow sheenwing", 0.65, -0.8, 0.45, (20, 34), (8, 11)) with
        {
            Role = InventedRole.Retreating,
            Marks = "wings dull grey below, without spots",
        };
        yield return Twin("Cindrava gemella", "twin ember-wing", "Cindrava gemellina", 0.75, 0.1, "cheek longer than wide; second wing cell with a right angle");
        yield return Twin("Cindrava gemellina", "lesser twin ember-wing", "Cindrava gemella", 0.5, -0.3, "cheek as long as wide; second wing cell with a blunt angle");
        yield return Solitary("Tindorqua secreta", "hermit tinderfly", 0.015, 0.6, 0.3, (22, 32), (13, 16)) with
        {
            GeneraliseToKm = 10,
            Marks = "the only tinderfly with a red edge to the hind wing",
            Evidence = "a photograph from above; do not collect",
        };
    }

    private static InventedSpecies Twin(string name, string vernacular, string other, double share, double warmth, string marks) =>
        Social(name, vernacular, share, warmth, 0.4, (14, 42), (10, 16)) with
        {
            Aggregate = TwinAggregate,
            ConfusedWith = other,
            Marks = marks,
            Evidence = TwinEvidence,
        };

    private static InventedSpecies Solitary(
        string name, string vernacular, double share, double warmth, double ease, (int From, int To) flight, (double Least, double Most) lengthMm) =>
        new(name, vernacular, Glimmers, share, warmth, ease,
        [
            new(InventedStage.Adult, flight.From, flight.To, 1, lengthMm.Least, lengthMm.Most),
            new(InventedStage.Larva, Math.Max(1, flight.From - 8), flight.From + 2, 0.15, lengthMm.Least, lengthMm.Most * 1.5),
        ]);

    // Queens appear first, workers five weeks later, males in the second half; queens are a quarter longer than workers.
    private static InventedSpecies Social(
        string name, string vernacular, double share, double warmth, double ease, (int From, int To) season, (double Least, double Most) workerMm) =>
        new(name, vernacular, EmberWings, share, warmth, ease,
        [
            new(InventedStage.Queen, season.From - 5, season.To - 2, 0.4, workerMm.Least * 1.25, workerMm.Most * 1.25),
            new(InventedStage.Worker, season.From, season.To, 1, workerMm.Least, workerMm.Most),
            new(InventedStage.Male, (season.From + season.To) / 2, season.To + 2, 0.3, workerMm.Least * 1.1, workerMm.Most),
        ]);
}
