using System.Globalization;

namespace RangeMap.Change.Tests.Trends;

/// <summary>
/// Every method against invented surveys whose truth is known. The explicit test prints the table of docs/methods/change.md; another
/// family of methods joins it by a line in <see cref="Measured"/>.
/// </summary>
public class ValidationTable(ITestOutputHelper output)
{
    private const int Seeds = 200;

    /// <summary>All estimates of one survey.</summary>
    internal static IEnumerable<ChangeEstimate> Measured(GroupSurvey survey, ChangeOptions options) =>
    [
        .. EffortCorrectedChange.Measure(survey, options),
        .. IndependentVisits.Measure(survey),
        .. Enumerable.Range(0, survey.Taxa).SelectMany(taxon => RangeSizeChange.Measure(survey, taxon, options)),
    ];

    [Fact(Explicit = true)]
    public void PrintTheTable()
    {
        foreach (var (name, world) in Scenarios.WithoutChange)
        {
            output.WriteLine($"No change, {name}: method | given | tell of change | tell of increase | tell of decline (% of given)");
            foreach (var row in Tally(world, Seeds, _ => true))
                output.WriteLine(row.Text());
        }

        output.WriteLine("Decline of 30 % under twice the visits: method | given | tell of change | increase | decline | hold the truth");
        foreach (var row in Tally(Scenarios.Decline, Seeds, taxon => taxon < Scenarios.Decline.Declining))
            output.WriteLine(row.Text());
    }

    /// <summary>The tally of each method over some seeds and the taxa chosen.</summary>
    internal static List<MethodTally> Tally(SimulatedSurvey world, int seeds, Func<int, bool> taxa)
    {
        var tallies = new Dictionary<string, MethodTally>(StringComparer.Ordinal);
        for (ulong seed = 1; seed <= (ulong)seeds; seed++)
        {
            var group = world.Make(seed);
            foreach (var estimate in Measured(group.Survey, new()).Where(estimate => taxa(estimate.Taxon)))
            {
                if (!tallies.TryGetValue(estimate.Method, out var tally))
                    tallies.Add(estimate.Method, tally = new(estimate.Method));
                tally.Add(estimate, group);
            }
        }

        return [.. tallies.Values];
    }
}

/// <summary>How often a method gave numbers, told of change and held the truth.</summary>
internal sealed class MethodTally(string method)
{
    private int _all;
    private int _given;
    private int _up;
    private int _down;
    private int _known;
    private int _holding;
    private double _sum;

    internal string Method => method;

    /// <summary>Share of the estimates given whose interval lies above 0.</summary>
    internal double Up => (double)_up / _given;

    /// <summary>Share of the estimates given whose interval lies below 0.</summary>
    internal double Down => (double)_down / _given;

    /// <summary>Share of the estimates given whose interval leaves 0 out.</summary>
    internal double Telling => Up + Down;

    /// <summary>Share of the intervals that hold the truth, where the method's unit has one.</summary>
    internal double Holding => (double)_holding / _known;

    internal int Given => _given;

    internal void Add(ChangeEstimate estimate, SimulatedGroup group)
    {
        _all++;
        if (estimate.Value is not { } value)
            return;
        _given++;
        _sum += value;
        _up += estimate.Low > 0 ? 1 : 0;
        _down += estimate.High < 0 ? 1 : 0;
        if (Truth(estimate, group) is not { } truth)
            return;
        _known++;
        _holding += estimate.Low <= truth && truth <= estimate.High ? 1 : 0;
    }

    internal string Text() => string.Create(
        CultureInfo.InvariantCulture,
        $"| {method} | {100.0 * _given / _all:0} | {100 * Telling:0.0} | {100 * Up:0.0} | {100 * Down:0.0} | {(_known == 0 ? "-" : (100 * Holding).ToString("0.0", CultureInfo.InvariantCulture))} | mean {_sum / _given:0.00}");

    // In units of its own a method has no truth to hold.
    private static double? Truth(ChangeEstimate estimate, SimulatedGroup group) => estimate.Method switch
    {
        ChangeMethods.Occupancy => group.TruePoints(estimate.Taxon),
        ChangeMethods.NeighbourhoodFrequency or ChangeMethods.Squares or ChangeMethods.SquaresBoth or ChangeMethods.SquaresSurveyed => group.TruePercent(estimate.Taxon),
        _ => null,
    };
}
