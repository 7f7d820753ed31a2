namespace RangeMap.Change;

/// <summary>
/// What a naturalist may say of one taxon's change: the measures corrected for effort are weighed against each other, plain counts only
/// beside them.
/// </summary>
public static class ChangeVerdict
{
    // Lists a fifth longer, or a sixth shorter, are not what they were.
    private const double SameLength = 1.2;

    // Methods that allow for effort; a share of visits joins them where lists stayed as long as they were.
    private static readonly string[] _corrected =
        [ChangeMethods.Occupancy, ChangeMethods.ListLength, ChangeMethods.NeighbourhoodFrequency, ChangeMethods.RelativeIndex, ChangeMethods.SquaresSurveyed];

    /// <summary>The verdict, in sentences.</summary>
    /// <param name="ofTaxon">Estimates of one taxon, by whichever methods.</param>
    /// <param name="effort">What recorders did in both periods.</param>
    public static string Of(IReadOnlyList<ChangeEstimate> ofTaxon, EffortChange effort)
    {
        var corrected = ofTaxon.Where(estimate => _corrected.Contains(estimate.Method) || estimate.Method == ChangeMethods.ReportingRate && SameLists(effort)).ToArray();
        ChangeEstimate[] given = [.. corrected.Where(estimate => estimate.Value is not null)];
        ChangeEstimate[] up = [.. given.Where(estimate => estimate.Low > 0)], down = [.. given.Where(estimate => estimate.High < 0)];
        string?[] sentences =
        [
            VerdictWords.Effort(effort),
            Conclusion(given, up, down),
            given.Length > 0 && up.Length + down.Length == 0 ? Room(ofTaxon) : null,
            Plain(ofTaxon, given, up, down, effort),
            Margins(ofTaxon),
            SetAside(ofTaxon, effort),
            VerdictWords.Missing(corrected.Length - given.Length, corrected.Length),
            given.Length > 0 ? Limits(given) : null,
        ];
        return string.Join(" ", sentences.OfType<string>());
    }

    private static string Conclusion(ChangeEstimate[] given, ChangeEstimate[] up, ChangeEstimate[] down)
    {
        if (given.Length == 0)
            return VerdictWords.NothingGiven;
        if (up.Length > 0 && down.Length > 0)
            return VerdictWords.Disagree(up, down);
        if (up.Length + down.Length == 0)
            return VerdictWords.NoChange(given.Length);

        var (word, telling) = up.Length > 0 ? ("an increase", up) : ("a decline", down);
        return given.Length == 1 ? VerdictWords.OnlyOne(word, telling[0])
            : telling.Length > 1 && 2 * telling.Length > given.Length ? VerdictWords.Agree(word, telling, given.Length)
            : VerdictWords.Weak(word, telling, given.Length);
    }

    // How large a change may have gone unseen, in the measure that is easiest to picture.
    private static string? Room(IReadOnlyList<ChangeEstimate> ofTaxon) =>
        ofTaxon.FirstOrDefault(estimate => estimate is { Method: ChangeMethods.Occupancy, Value: not null }) is { } occupancy ? VerdictWords.Room(occupancy) : null;

    private static string? Plain(IReadOnlyList<ChangeEstimate> ofTaxon, ChangeEstimate[] given, ChangeEstimate[] up, ChangeEstimate[] down, EffortChange effort)
    {
        if (ofTaxon.FirstOrDefault(estimate => estimate is { Method: ChangeMethods.Squares, Value: not null }) is not { } squares || given.Length == 0)
            return null;

        int corrected = up.Length > 0 && down.Length > 0 ? 0 : Math.Sign(up.Length - down.Length), plain = squares.Low > 0 ? 1 : squares.High < 0 ? -1 : 0;
        var visits = Math.Sign(effort.After.Visits - effort.Before.Visits);
        return plain == corrected ? VerdictWords.PlainAgrees(squares, plain)
            : plain == 0 || plain == -corrected ? VerdictWords.PlainHides(squares, corrected, visits)
            : plain == visits ? VerdictWords.PlainFollowsEffort(squares)
            : VerdictWords.PlainUnexplained(squares);
    }

    // A range may move at one side and stay as large as it was; the margins are measured at equal recording already.
    private static string? Margins(IReadOnlyList<ChangeEstimate> ofTaxon)
    {
        ChangeEstimate[] moved = [.. ofTaxon.Where(estimate => VerdictWords.Side(estimate.Method) is not null && estimate.TellsChange)];
        return moved.Length == 0 ? null : VerdictWords.Margins(moved);
    }

    private static string? SetAside(IReadOnlyList<ChangeEstimate> ofTaxon, EffortChange effort) =>
        !SameLists(effort) && ofTaxon.Any(estimate => estimate is { Method: ChangeMethods.ReportingRate, Value: not null }) ? VerdictWords.RateSetAside(effort) : null;

    private static string? Limits(ChangeEstimate[] given) =>
        Array.Exists(given, estimate => estimate.Method is ChangeMethods.RelativeIndex or ChangeMethods.NeighbourhoodFrequency) ? VerdictWords.Relative : null;

    private static bool SameLists(EffortChange effort) =>
        EffortRatio.Of(effort.Before, effort.After).MeanListLength is > 1 / SameLength and < SameLength;
}
