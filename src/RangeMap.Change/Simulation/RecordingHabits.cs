namespace RangeMap.Change;

/// <summary>What recorders write down and how exactly. The shares are invented.</summary>
internal static class RecordingHabits
{
    /// <summary>Side in metres of the square stated; finer as time goes on.</summary>
    /// <param name="recent">0 in the first year, near 1 in the last.</param>
    /// <param name="chance">The stream to draw from.</param>
    internal static int Precision(double recent, ref Pcg chance)
    {
        var u = chance.NextUnit();
        double hectads = 0.22 - 0.19 * recent, tetrads = 0.16 - 0.1 * recent, monads = 0.42 - 0.22 * recent;
        return u < hectads ? 10_000
            : u < hectads + tetrads ? 2_000
            : u < hectads + tetrads + monads ? 1_000
            : u < 1 - 0.45 * recent ? 100
            : 10;
    }

    /// <summary>How exactly the date is written; vague dates grow rarer.</summary>
    internal static WrittenDate Written(double recent, ref Pcg chance)
    {
        var u = chance.NextUnit();
        return u < 0.03 * (1 - recent) ? WrittenDate.Year : u < 0.12 * (1 - recent) + 0.01 ? WrittenDate.Month : WrittenDate.Day;
    }

    internal static InventedEvidence Evidence(ref Pcg chance) => chance.NextUnit() switch
    {
        < 0.55 => InventedEvidence.Sighting,
        < 0.92 => InventedEvidence.Photograph,
        _ => InventedEvidence.Specimen,
    };

    /// <summary>Share of the records of a member of an aggregate that go no further than the aggregate.</summary>
    internal static double AggregateShare(InventedEvidence evidence) => evidence switch
    {
        InventedEvidence.Specimen => 0.05,
        InventedEvidence.Photograph => 0.5,
        _ => 0.8,
    };

    internal static InventedSex Sex(InventedStage stage, ref Pcg chance) => stage switch
    {
        InventedStage.Queen or InventedStage.Worker => InventedSex.Female,
        InventedStage.Male => InventedSex.Male,
        InventedStage.Adult when chance.NextChance(0.3) => chance.NextChance(0.5) ? InventedSex.Female : InventedSex.Male,
        _ => InventedSex.NotNoted,
    };

    /// <summary>Individuals: one half of the time, each further one half as likely, at most 20.</summary>
    internal static int Count(ref Pcg chance)
    {
        var count = 1;
        while (count < 20 && chance.NextChance(0.5))
            count++;
        return count;
    }

    internal static InventedReview Review(InventedEvidence evidence, bool mistaken, ref Pcg chance)
    {
        var u = chance.NextUnit();
        if (mistaken)
            return u < 0.35 ? InventedReview.Rejected : u < 0.6 ? InventedReview.Doubtful : InventedReview.Unreviewed;

        var confirmed = evidence == InventedEvidence.Sighting ? 0.15 : 0.7;
        return u < confirmed ? InventedReview.Confirmed : u > 0.995 ? InventedReview.Doubtful : InventedReview.Unreviewed;
    }
}
