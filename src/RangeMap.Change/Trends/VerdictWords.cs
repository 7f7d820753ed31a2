using System.Globalization;

namespace RangeMap.Change;

/// <summary>The sentences of <see cref="ChangeVerdict"/>, for a naturalist.</summary>
internal static class VerdictWords
{
    // Visits or squares within a fifth of what they were count as about as many.
    private const double AboutTheSame = 1.2;

    internal const string NothingGiven =
        "None of the measures that allow for effort can be given for this taxon, so nothing can be said of a change: a count of squares follows the recorders as much as the taxon.";

    internal const string Relative = "A change shared by the whole group does not show in measures that compare the taxon with the rest of it.";

    internal static string Effort(EffortChange effort)
    {
        var (before, after) = (effort.Before, effort.After);
        return Text($"Recorders made {Visits(before.Visits, after.Visits)} in {after.Label} ({after.Visits}) as in {before.Label} ({before.Visits}), to {after.Squares} squares instead of {before.Squares}, and noted {after.MeanListLength ?? 0:0.0} taxa a visit instead of {before.MeanListLength ?? 0:0.0}.");
    }

    internal static string Disagree(ChangeEstimate[] up, ChangeEstimate[] down) =>
        Text($"The measures that allow for effort disagree: {Names(up)} {Tell(up)} of an increase, {Names(down)} of a decline. No change should be claimed before it is known why.");

    internal static string NoChange(int given) =>
        Text($"{(given == 1 ? "The one measure that allows for effort and can be given tells" : $"None of the {given} measures that allow for effort tells")} {(given == 1 ? "of no change" : "of a change")}. That does not show that there was none.");

    internal static string OnlyOne(string word, ChangeEstimate telling) =>
        Text($"Only one measure that allows for effort can be given, {Names([telling])}; it tells of {word} ({Numbers(telling)}), and there is nothing to check it by.");

    internal static string Agree(string word, ChangeEstimate[] telling, int given) =>
        Text($"{(telling.Length == given ? $"All {given}" : $"{telling.Length} of {given}")} measures that allow for effort tell of {word}, none of the opposite: {List(telling)}. This is good evidence of {word}.");

    internal static string Weak(string word, ChangeEstimate[] telling, int given) =>
        Text($"Of {given} measures that allow for effort {telling.Length} {(telling.Length == 1 ? "tells" : "tell")} of {word}, {List(telling)}; the others see nothing beyond chance. This is weak evidence: among so many measures some may stray by chance, or be misled by a change in how people record.");

    internal static string Room(ChangeEstimate occupancy) =>
        Text($"The occupancy model leaves room for anything from {Signed(occupancy.Low)} to {Signed(occupancy.High)} percentage points of the squares.");

    internal static string PlainAgrees(ChangeEstimate squares, int direction) => direction == 0
        ? Text($"The plain count of squares ({Numbers(squares)}) tells of no change either.")
        : Text($"The plain count of squares points the same way ({Numbers(squares)}), though by itself it would prove little.");

    internal static string PlainHides(ChangeEstimate squares, int corrected, int visits) =>
        Text($"The plain count of squares does not show this ({Numbers(squares)}){Because(corrected, visits)}.");

    internal static string PlainFollowsEffort(ChangeEstimate squares) =>
        Text($"The plain count of squares {(squares.Value > 0 ? "rose" : "fell")} ({Numbers(squares)}), but so did the number of visits, and the measures that allow for them see no such change: it is most likely the recorders'.");

    internal static string PlainUnexplained(ChangeEstimate squares) =>
        Text($"The plain count of squares {(squares.Value > 0 ? "rose" : "fell")} ({Numbers(squares)}) against the number of visits, yet the measures that allow for them see no change beyond chance: look at the map before judging.");

    internal static string Margins(ChangeEstimate[] moved) =>
        Text($"At equal recording {string.Join(", ", moved.Select(Moved))}.");

    /// <summary>The side of a margin that is the mean of its ten outermost squares; null for any other method.</summary>
    internal static string? Side(string method) => method switch
    {
        ChangeMethods.MarginNorth => "northern",
        ChangeMethods.MarginSouth => "southern",
        ChangeMethods.MarginEast => "eastern",
        ChangeMethods.MarginWest => "western",
        _ => null,
    };

    private static string Moved(ChangeEstimate margin)
    {
        var (least, most) = margin.Value > 0 ? (margin.Low, margin.High) : (-margin.High, -margin.Low);
        return Text($"the {Side(margin.Method)} margin {(margin.Value > 0 ? "advanced" : "drew back")} by {Math.Abs(margin.Value!.Value):0} km ({least:0} to {most:0})");
    }

    internal static string RateSetAside(EffortChange effort) =>
        Text($"The share of visits with the taxon is set aside, because lists have grown {(effort.After.MeanListLength > effort.Before.MeanListLength ? "longer" : "shorter")}.");

    internal static string? Missing(int refused, int all) => refused == 0 || refused == all
        ? null
        : Text($"{refused} of {all} such measures could not be given; each says why.");

    private static string Because(int corrected, int visits) =>
        visits == -corrected ? $": {(visits > 0 ? "more" : "fewer")} visits find {(visits > 0 ? "more" : "fewer")} of the squares that there are, which covers it up" : "";

    private static string Visits(int before, int after) => before == 0 || after <= before * AboutTheSame && before <= after * AboutTheSame
        ? "about as many visits"
        : Text($"{(double)after / before:0.0#} times as many visits");

    private static string List(ChangeEstimate[] estimates) => string.Join("; ", estimates.Select(estimate => $"{Name(estimate.Method)} {Numbers(estimate)}"));

    private static string Names(ChangeEstimate[] estimates) => string.Join(" and ", estimates.Select(estimate => Name(estimate.Method)));

    private static string Tell(ChangeEstimate[] estimates) => estimates.Length == 1 ? "tells" : "tell";

    private static string Numbers(ChangeEstimate estimate) =>
        Text($"{Signed(estimate.Value)}{(estimate.Unit == "%" ? " %" : $" {estimate.Unit}")}, interval {Signed(estimate.Low)} to {Signed(estimate.High)}");

    // Two figures or so, and never a 0 that is none.
    private static string Signed(double? number) =>
        (number ?? 0).ToString(Math.Abs(number ?? 0) switch { < 1 => "+0.00;-0.00;0", < 10 => "+0.0;-0.0", _ => "+0;-0" }, CultureInfo.InvariantCulture);

    private static string Name(string method) => method switch
    {
        ChangeMethods.Occupancy => "the occupancy model",
        ChangeMethods.ListLength => "lists of equal length",
        ChangeMethods.NeighbourhoodFrequency => "frequency against common taxa nearby",
        ChangeMethods.RelativeIndex => "the comparison with the average taxon",
        ChangeMethods.SquaresSurveyed => "squares well surveyed in both periods",
        ChangeMethods.ReportingRate => "the share of visits",
        _ => method,
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
