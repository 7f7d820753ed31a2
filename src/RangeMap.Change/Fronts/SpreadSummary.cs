using System.Globalization;

namespace RangeMap.Change;

/// <summary>Puts the findings about one spread into words.</summary>
internal static class SpreadSummary
{
    // A difference between the front and the average of first records that deserves a sentence.
    private const double Telling = 0.25;

    // An estimated origin wider than this, in squares, is no single place.
    private const double WideOriginSquares = 10;

    private static readonly string[] Compass = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

    /// <summary>All that a summary tells of.</summary>
    internal sealed record Findings(
        SpreadOrigin? Origin, IReadOnlyList<SpreadEstimate> Estimators, IReadOnlyList<SectorSpeed> Sectors, IReadOnlyList<SpreadPhase> Phases,
        IReadOnlyList<SpreadJump> Jumps, OriginRange? OriginRange, SpreadOptions Options);

    internal static string Of(Findings found)
    {
        var options = found.Options;
        var front = found.Estimators.Single(e => e.Method == SpreadMethods.FrontQuantile);
        var average = found.Estimators.Single(e => e.Method == SpreadMethods.AllPoints);
        IEnumerable<string?> sentences =
        [
            // Where the speed changed, that is the finding; a single speed comes after it.
            Change(found.Phases, options),
            Headline(front, options),
            front.KmPerYear is null ? Instead(average, options) : Disagreement(front, average),
            ByVisits(front, found.Estimators.Single(e => e.Method == SpreadMethods.IntervalCensored)),
            Direction(found.Sectors, options),
            Jumps(found.Jumps),
            WideOrigin(found.Origin, options),
            OriginMatters(front, found.OriginRange),
        ];
        return string.Join(' ', sentences.Where(s => s is not null));
    }

    private static string Headline(SpreadEstimate front, SpreadOptions options)
    {
        if (front.Refused is not null)
            return Text($"No front speed: {front.Refused}.");

        var evidence = Text($"{options.Confidence * 100:0.#} % interval {Round(front.Low)} to {Round(front.High)}; {front.N} squares, {front.FirstYear:0.##}-{front.LastYear:0.##}");
        return front switch
        {
            { Low: > 0 } => Text($"The front advances about {Round(front.KmPerYear)} km a {options.TimeUnit} ({evidence})."),
            { High: < 0 } => Text($"Later first records lie closer to the origin, by about {Round(-front.KmPerYear)} km a {options.TimeUnit} ({evidence}): this is no advance from there."),
            _ => Text($"No advance can be told from these first records: {Round(front.KmPerYear)} km a {options.TimeUnit} ({evidence})."),
        };
    }

    private static string? Instead(SpreadEstimate average, SpreadOptions options) => average.KmPerYear is null ? null
        : Text($"First records as a whole move outwards by {Round(average.KmPerYear)} km a {options.TimeUnit} ({Round(average.Low)} to {Round(average.High)}; {average.N} squares), which is not the speed of a front.");

    private static string? Disagreement(SpreadEstimate front, SpreadEstimate average)
    {
        if (average.KmPerYear is null || front.Low <= 0 || Math.Abs(front.KmPerYear!.Value - average.KmPerYear.Value) <= Telling * front.KmPerYear.Value)
            return null;

        return average.KmPerYear < front.KmPerYear
            ? Text($"The average of all first records is much slower ({Round(average.KmPerYear)}): many squares behind the front were found long after the species reached them, or the range filled in late.")
            : Text($"The average of all first records is faster ({Round(average.KmPerYear)}): the rear of the first records moves out faster than their front, as when the spread slows or nears its limit.");
    }

    private static string? ByVisits(SpreadEstimate front, SpreadEstimate intervals)
    {
        if (intervals.KmPerYear is null || !(front.Low > 0) || Math.Abs(front.KmPerYear!.Value - intervals.KmPerYear.Value) <= Telling * front.KmPerYear.Value)
            return null;

        return intervals.KmPerYear > front.KmPerYear
            ? Text($"Dated by the visits that found nothing before, arrivals give a faster spread ({Round(intervals.KmPerYear)}): either those visits missed a species that was there, or far squares were found long after they were reached.")
            : Text($"Dated by the visits that found nothing before, arrivals give a slower spread ({Round(intervals.KmPerYear)}): a few squares far ahead lead the front, or many squares near the origin were reached late or not at all.");
    }

    private static string? Change(IReadOnlyList<SpreadPhase> phases, SpreadOptions options)
    {
        if (phases.Count < 2)
            return null;

        var (before, after) = (phases[0].KmPerYear, phases[1].KmPerYear);
        var change = phases[1].Movement switch
        {
            FrontMovement.DrawsBack => "turned into a retreat",
            FrontMovement.StandsStill when phases[0].Movement != FrontMovement.StandsStill => "came to a stand",
            _ => after > before ? "quickened" : "slowed",
        };
        return Text($"The spread {change} about {phases[1].From:0}: the farthest square moved {Outwards(before)} km a {options.TimeUnit} before and {Outwards(after)} after, so no single speed tells it all.");
    }

    private static string Outwards(double speed) => speed < 0 ? $"in by {Round(-speed)}" : $"out by {Round(speed)}";

    private static string? Jumps(IReadOnlyList<SpreadJump> jumps)
    {
        if (jumps.Count == 0)
            return null;
        var farthest = jumps.MaxBy(jump => jump.KmAhead)!;
        var spread = jumps.Sum(jump => jump.Squares - 1);
        var which = jumps.Count == 1 ? "One square lies" : Text($"{jumps.Count} squares lie");
        var followed = spread == 0 ? "" : Text($" {spread} more spread from there, as from a second introduction.");
        return Text($"{which} far ahead of the front and of every earlier square (up to {Round(farthest.KmAhead)} km beyond the front, in {farthest.Time:0}): carried, brought in once more, or to be checked.{followed} The front is measured without {(jumps.Count == 1 && spread == 0 ? "it" : "them")}.");
    }

    private static string? OriginMatters(SpreadEstimate front, OriginRange? range) =>
        range is { Squares: > 1 } && front.Low > 0 && range.High - range.Low > Telling * front.KmPerYear
            ? Text($"Measured from one or other of the {range.Squares} earliest squares the front speed would be {Round(range.Low)} to {Round(range.High)}.")
            : null;

    private static string? Direction(IReadOnlyList<SectorSpeed> sectors, SpreadOptions options)
    {
        // A sector whose interval reaches down to nought says nothing about direction.
        var measured = sectors.Where(s => s.Low > 0).ToList();
        if (measured.Count < 2)
            return null;

        var fastest = measured.MaxBy(s => s.KmPerYear)!;
        return Text($"Fastest towards the {CompassOf(fastest.Bearing)} ({Round(fastest.KmPerYear)} km a {options.TimeUnit}, {Round(fastest.Low)} to {Round(fastest.High)}; {fastest.N} squares).");
    }

    private static string? WideOrigin(SpreadOrigin? origin, SpreadOptions options) =>
        origin is { Estimated: true } && origin.RadiusKm > WideOriginSquares * options.SquareSideKm
            ? Text($"The {origin.Squares} earliest squares lie up to {Round(origin.RadiusKm)} km from their middle, so the origin is uncertain: give one if it is known.")
            : null;

    private static string CompassOf(double bearing) => Compass[(int)Math.Floor(bearing / 45 + 0.5) % Compass.Length];

    // Two significant figures at least, and no decimals from 100 on: a reader should not be told more than is known.
    private static string Round(double? value) => value!.Value.ToString(
        Math.Abs(value.Value) switch { >= 100 => "0", >= 10 => "0.#", >= 1 => "0.0", _ => "0.00" }, CultureInfo.InvariantCulture);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
