using System.Globalization;

namespace RangeMap.Change.Tests.Trends;

/// <summary>How often the verdict says what in surveys whose truth is known. The explicit test prints the second table of docs/methods/change.md.</summary>
public class VerdictTable(ITestOutputHelper output)
{
    private static readonly string[] _phrases = ["good evidence of a decline", "good evidence of an increase", "weak evidence", "disagree:", "tells of a change", "nothing can be said"];

    [Fact]
    public void FewTaxaThatDidNotChangeAreCalledGoodEvidenceAndADeclineNeverAnIncrease()
    {
        var steady = Shares(Scenarios.TwiceTheVisits, 10, 60);
        Assert.True(steady[0] + steady[1] < 0.03, $"{steady[0] + steady[1]:P1} of steady taxa");
        var declining = Shares(Scenarios.Decline, 10, Scenarios.Decline.Declining);
        Assert.True(declining[0] > 0.12, $"{declining[0]:P1} of declining taxa");
        Assert.Equal(0, declining[1]);
    }

    [Fact(Explicit = true)]
    public void PrintTheVerdicts()
    {
        output.WriteLine($"world | {string.Join(" | ", _phrases)} (% of taxa)");
        foreach (var (name, world) in Scenarios.WithoutChange.Append(("decline of 30 %", Scenarios.Decline)))
        {
            var shares = Shares(world, 200, world.Declining == 0 ? world.Taxa : world.Declining);
            output.WriteLine($"first seed: {EffortChange.Of(world.Make(1).Survey)}");
            output.WriteLine($"| {name} | {string.Join(" | ", shares.Select(share => (100 * share).ToString("0.0", CultureInfo.InvariantCulture)))} |");
        }
    }

    private static double[] Shares(SimulatedSurvey world, int seeds, int taxa)
    {
        var counts = new int[_phrases.Length];
        for (ulong seed = 1; seed <= (ulong)seeds; seed++)
        {
            var survey = world.Make(seed).Survey;
            var (prepared, effort) = (EffortCorrectedChange.Prepare(survey, new()), EffortChange.Of(survey)!);
            for (var taxon = 0; taxon < taxa; taxon++)
            {
                var verdict = ChangeVerdict.Of(prepared.Of(taxon), effort);
                for (var i = 0; i < counts.Length; i++)
                    counts[i] += verdict.Contains(_phrases[i], StringComparison.Ordinal) ? 1 : 0;
            }
        }

        return Array.ConvertAll(counts, count => (double)count / seeds / taxa);
    }
}
