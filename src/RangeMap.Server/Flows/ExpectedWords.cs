using System.Globalization;
using RangeMap.Change;

namespace RangeMap.Server;

/// <summary>Why a species is expected in a square, in words.</summary>
internal static class ExpectedWords
{
    /// <summary>One or two sentences.</summary>
    /// <param name="chance">What the chance is made from.</param>
    /// <param name="since">First year of the evidence.</param>
    public static string Of(LocalChance chance, int since)
    {
        var near = string.Create(CultureInfo.InvariantCulture, $"Found since {since} in {chance.With} of the {chance.Searched} squares round it that were searched");
        var here = chance.VisitsHere switch
        {
            0 => "nobody looked here in that time",
            1 => "the one visit here missed it",
            var visits => string.Create(CultureInfo.InvariantCulture, $"{visits} visits here missed it"),
        };
        return $"{near}; {here}{(chance.VisitsHere == 0 ? "" : $", and where it lives {Often(chance.Detection)}")}.";
    }

    private static string Often(double detection) => Math.Round(1 / detection) switch
    {
        <= 1 => "nearly every visit notes it",
        2 => "about every second visit notes it",
        var visits => string.Create(CultureInfo.InvariantCulture, $"about one visit in {visits} notes it"),
    };
}
