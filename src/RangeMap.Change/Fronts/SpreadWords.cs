using System.Globalization;

namespace RangeMap.Change;

/// <summary>All sentences about single estimates of spread, in one place.</summary>
internal static class SpreadWords
{
    internal const string NoSquares = "not enough squares: there are none with a first record";

    internal const string NoPlaces = "sectors need the place of each square; only distances were given";

    internal const string NoVisits = "needs the visits that found nothing; only first records were given";

    internal const string NoBound = "the year of arrival cannot be told to change with distance, so a speed has no bound";

    internal const string IntervalsNote = "a visit that missed the species counts as absence, which dates arrivals late and makes the speed high where recording is thin or grows";

    internal const string GammaNote = "follows all squares, so that single ones hardly move it; high by about a sixth where the range is filled up to its front";

    internal const string ModelNote = "allows for visits that missed the species; the slope of a smooth surface of arrival years on distance from its own earliest finds";

    internal const string NotFinite = "the numbers are too large or too alike for a speed to be computed";

    internal const string NoResamples = "the interval cannot be found: most resamples hold first records of one year only";

    internal const string AllPointsNote = "average of first records; low when squares are found long after the species reached them";

    internal static string RootAreaNote(double openAngle) => openAngle < 2 * Math.PI
        ? string.Create(CultureInfo.InvariantCulture, $"area equivalent, over the {openAngle * 180 / Math.PI:0} of 360 degrees round the origin that are land; low when squares are missed, high when recording grows")
        : "area equivalent; low when squares are missed, high when recording grows";

    internal const string MaximumNote = "follows the farthest square alone; not a speed to quote";

    internal static string PresentFromStart(int squares, double acrossKm, double start) =>
        Text($"the species was found in {squares} squares about {acrossKm:0} km across when recording began ({start:0.##}): its first records tell where people looked first, not when it arrived");

    internal static string NotNumbers(int unsound, int rows) =>
        Text($"{unsound} of {rows} rows hold a place, distance or time that is not a usable number");

    internal static string NotEnoughSquares(int found, int least) => Text($"not enough squares: {found} of at least {least}");

    internal static string NotEnoughTimes(int found, int least, string unit) =>
        Text($"not enough {unit}s with first records: {found} of at least {least}");

    internal static string NotEnoughDated(int found, int least) =>
        Text($"not enough squares visited both before the species was there and after: {found} of at least {least}");

    internal static string NotEnoughWindows(int found, int least, int squares) =>
        Text($"not enough stretches of years with finds in {squares} or more squares: {found} of at least {least}");

    internal static string NotEnoughSectors(int found, int squares) =>
        Text($"not enough sectors with {squares} or more squares: {found} of at least 2");

    internal static string SectorsNote(int sectors) => Text($"mean of {sectors} sectors, each by its farthest square; sectors that end at a coast pull it down");

    internal static string WithoutJumps(int jumps) => Text($"{jumps} {(jumps == 1 ? "square" : "squares")} far ahead left out");

    internal static string NotUnique(Interval slopes, string unit) =>
        Text($"lines with speeds from {slopes.Low:0.###} to {slopes.High:0.###} km a {unit} fit equally well; the middle is given");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
