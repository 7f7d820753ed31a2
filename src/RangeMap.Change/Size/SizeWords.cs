using System.Globalization;

namespace RangeMap.Change;

/// <summary>All sentences about size of range, in one place.</summary>
internal static class SizeWords
{
    internal const string OnePeriod = "There are fewer than two periods, so there is no change to measure.";

    internal const string NoPlace = "A square of the survey has no place or no area on its plane.";

    internal const string NotFound = "Not found in either period.";

    internal const string NoCompared = "No square was surveyed in both periods.";

    internal const string NoWellSurveyed = "No square was well surveyed in both periods.";

    internal const string NoDraws = "Too many draws of blocks leave nothing of the range, so chance cannot be told from change.";

    internal const string NoTaxa = "No taxon was found in either period.";

    internal const string AllOccupied = " It was in every square compared in both periods: a gain could not show.";

    internal static string TooFewBefore(int found, int least, bool compared = false) =>
        Text($"Found in {Squares(found)}{(compared ? " of those compared" : null)} in the earlier period; a percentage needs at least {least}.");

    internal static string MissingIn(int before) => before == 0 ? "Not found in the earlier period." : "Not found in the later period.";

    internal static string TooFewForCentroid(int before, int after, int least) =>
        Text($"Found in {Squares(before)} in the earlier period and {after} in the later; the middle of a range needs at least {least} in each.");

    internal static string NotWellSurveyed(string period, SquareEffort effort) =>
        Text($"Not well surveyed in the {period} period: {effort.Visits} {(effort.Visits == 1 ? "visit" : "visits")}, coverage {effort.ByLists.Coverage:0.00}.");

    internal static string TooFewBlocks(int held, int least, double sideKm) =>
        Text($"Its squares lie in {held} {(held == 1 ? "block" : "blocks")} of {sideKm:0.##} km; telling chance from change needs at least {least}.");

    internal static string Raw(int gained, int lost, int kept, int surveyedBefore, int surveyedAfter) =>
        Text($"{Moves(gained, lost, kept)}. Not corrected for effort: {Squares(surveyedBefore)} surveyed in the earlier period, {surveyedAfter} in the later.");

    internal static string Compared(int gained, int lost, int kept, int compared, bool well) =>
        Text($"{Moves(gained, lost, kept)}, of {Squares(compared)} {(well ? "well surveyed" : "surveyed")} in both periods.");

    internal static string Extent(int before, int after) =>
        Text($"Convex hull of the corners of {Squares(before)} before and {after} after; it hangs on the outermost few and is not corrected for effort.");

    internal static string AlphaHull(double alpha, double cutKm) =>
        Text($"Triangles with an edge longer than {cutKm:0.#} km ({alpha:0.##} times the mean edge of the earlier period) are left out; not corrected for effort.");

    internal static string Occupancy(double sideKm, double c1, double c2) =>
        Text($"Scaled from squares of {sideKm:0.##} km to 2 km (C {c1:0.00} before, {c2:0.00} after); not corrected for effort.");

    internal const string OccupancyCounted = "Squares of 2 km counted; not corrected for effort.";

    internal static string Centroid(double bearing, double? kmAmongBoth, int both) =>
        Text($"Towards {bearing:0} degrees. Not corrected for effort{(kmAmongBoth is null ? "." : Text($"; among the {Squares(both)} surveyed in both periods {kmAmongBoth:0.#} km."))}");

    private static string Moves(int gained, int lost, int kept) => Text($"{gained} gained, {lost} lost, {kept} kept");

    private static string Squares(int n) => n == 1 ? "1 square" : Text($"{n} squares");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
