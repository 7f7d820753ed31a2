using System.Globalization;

namespace RangeMap.Change;

/// <summary>All sentences about margins, in one place.</summary>
internal static class MarginWords
{
    internal const string TooThin = "With the recording of both periods levelled too few squares are left for a margin.";

    internal static string TooFew(int before, int after, int least) =>
        Text($"Found in {before} {(before == 1 ? "square" : "squares")} in the earlier period and {after} in the later; a margin needs at least {least} in each.");

    internal static string TooFewStrips(int held, int least, double widthKm) =>
        Text($"Its squares lie in {held} {(held == 1 ? "strip" : "strips")} {widthKm:0.##} km wide; telling chance from change needs at least {least}.");

    /// <summary>What levelling did; what all records would have said.</summary>
    internal static string Levelled(SurveyFrame frame, LevelledShift levelled, double unlevelledKm)
    {
        var (m1, m2) = (frame.Before.Records, frame.After.Records);
        if (m1 == m2)
            return "Both periods have equally many records of the group.";
        var (thinned, drawn, all) = m2 > m1 ? ("later", m1, m2) : ("earlier", m2, m1);
        var thinning = Text($"Records of the {thinned} period thinned to {drawn} of the group's {all}, {frame.Options.Draws} times");
        return Text($"{thinning}: middle 95 % of the shifts {levelled.Middle.Low:0.#} to {levelled.Middle.High:0.#} km; with all records {unlevelledKm:0.#} km.");
    }

    internal static string? Coast(bool before, bool after) => (before, after) switch
    {
        (_, true) => " Its ten outermost squares stand at the last land in this direction: this margin can move no further out.",
        (true, false) => " In the earlier period its ten outermost squares stood at the last land in this direction.",
        _ => null,
    };

    internal static string Gamma(double quantile, double bearing) =>
        Text($" The {100 * quantile:0.#} % quantile of a gamma distribution of distances from the rear of the range, towards {bearing:0} degrees.");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
