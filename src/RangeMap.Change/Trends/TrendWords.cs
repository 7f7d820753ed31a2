using System.Globalization;

namespace RangeMap.Change;

/// <summary>All sentences about single estimates corrected for effort, in one place.</summary>
internal static class TrendWords
{
    internal const string OnePeriod = "Change needs two periods; the survey has fewer.";

    internal const string NoScatter = "The taxa of the group all lie on one line, so there is no scatter to measure this one by.";

    internal const string Separated =
        "Years and list lengths part the lists with the taxon from those without it, or all lists are of one year or one length, so no slope can be fitted.";

    internal const string FoundEverywhere = "The taxon was found in every square with effort that could have it, so its time factor has no upper bound.";

    internal const string OneBlock = "All finds lie in one small part of the map, so there is nothing to judge their scatter by.";

    internal const string NotSettled = "The occupancy model does not settle on a best fit for these visits.";

    internal const string OccupancyRuns = "The visits cannot tell a taxon that is nearly everywhere but seldom seen from one that is not there, so its occupancy is not known.";

    internal static string NotEnough(string what, int found, int least) => Text($"Not enough {what}: {found} of at least {least}.");

    internal static string NotEnoughSquaresFound(int before, int after, int least) =>
        Text($"Not enough squares with the taxon: {before} in the earlier period and {after} in the later, of at least {least} in each.");

    internal static string NotEnoughTaxaRelative(int taxa, TrendOptions options) =>
        Text($"Not enough taxa to compare with: {taxa} of at least {options.LeastTaxaRelative} were found in {options.LeastSquaresBefore} or more of the squares recorded in both periods, in the earlier one.");

    internal static string SeldomDetected(double chance, double least) =>
        Text($"The visits of a period would find the taxon in {100 * chance:0} % of the squares where it is, of at least {100 * least:0} %, so absence cannot be told from oversight.");

    internal static string RelativeNote(int taxa, double adjusted) => Text(
        $"Compared with the average of {taxa} taxa, so a change of the whole group shows as none. Standardised residual; with the taxon's own pull on the line taken out it is {adjusted:0.00}. The interval is that of a standard normal variable: by construction about 5 of 100 taxa lie outside it.");

    internal static string NeighbourhoodNote(int before, int after) => Text(
        $"Change of the time factor, which for a scarce taxon is that of its frequency. From {before} squares with effort in the earlier period and {after} in the later. Errors by blocks of squares.");

    internal static string ListsWith(int others) => Text($"lists with the taxon and at least {others} other {(others == 1 ? "taxon" : "taxa")}");

    internal static string ListLengthNote(int finds, int others, double inflation) => Text(
        $"From {finds} {ListsWith(others)}; its own name is not counted in the length. Errors by squares: {inflation:0.0} times the variance of independent lists.");

    internal static string ReportingRateNote(ClusteredShare before, ClusteredShare after) => Text(
        $"Share of {before.Visits} and {after.Visits} visits to squares visited in both periods. Visits to one square are alike: design effect {before.DesignEffect:0.0} and {after.DesignEffect:0.0}. A change in what recorders look for or write down shows as a change here.");

    internal static string OccupancyNote(double before, double after, double lost, double gained) => Text(
        $"A list of middling length finds the taxon where it is with a chance of {before:0.00} in the earlier period and {after:0.00} in the later; {100 * lost:0} % of occupied squares lost it, {100 * gained:0} % of the others gained it. Each period counts as one season.");

    internal static string OccupancyOfEachNote(double before, double after) => Text(
        $"Each period fitted by itself and taken as independent, since the model of both did not settle. A list of middling length finds the taxon where it is with a chance of {before:0.00} in the earlier period and {after:0.00} in the later.");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
