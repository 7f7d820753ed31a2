using System.Globalization;

namespace RangeMap.Change;

/// <summary>The sentences of <see cref="Screening"/>, for a naturalist.</summary>
internal static class ScreeningWords
{
    private const string NotOnlyChance =
        "That counts chance only: recording that changed in the same way for many taxa misleads for all of them at once. Look at the other measures, and at the map, before naming any.";

    /// <param name="method">The method screened by.</param>
    /// <param name="taxa">Taxa compared.</param>
    /// <param name="alone">How many tell of change when each is taken alone.</param>
    /// <param name="standing">How many stand out with all in view.</param>
    /// <param name="rate">Share of false alarms accepted among those.</param>
    internal static string Caution(string method, int taxa, int alone, int standing, double rate) =>
        $"{Alone(method, taxa, alone)} With all of them in view {Standing(standing, rate)} {NotOnlyChance}";

    private static string Alone(string method, int taxa, int alone) => Text(
        $"{taxa} {(taxa == 1 ? "taxon was" : "taxa were")} compared by {method}. Taken one at a time, {alone} of them tell of change; by chance alone about {0.05 * taxa:0} would.");

    private static string Standing(int standing, double rate) => standing switch
    {
        0 => "none stands out.",
        1 => "1 stands out.",
        _ => Text($"{standing} stand out, of which about {100 * rate:0} in 100 may still be false alarms."),
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
