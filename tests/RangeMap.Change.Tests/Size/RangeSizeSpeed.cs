using System.Diagnostics;
using System.Globalization;

namespace RangeMap.Change.Tests.Size;

/// <summary>How long all methods of size and margin take for a large group; run by hand.</summary>
public class RangeSizeSpeed(ITestOutputHelper output)
{
    [Theory(Explicit = true)]
    [InlineData(0.1)]
    [InlineData(0.3)]
    public void PrintTheTimeOfThreeThousandTaxaInThreeThousandSquares(double occupied)
    {
        var survey = Large(3000, occupied);
        var options = new ChangeOptions();
        var watch = Stopwatch.StartNew();
        RangeSizeChange.Measure(survey, 0, options);
        var first = watch.Elapsed.TotalSeconds;
        watch.Restart();
        var processor = Environment.CpuUsage.UserTime;
        var given = Enumerable.Range(0, survey.Taxa).Sum(taxon => RangeSizeChange.Measure(survey, taxon, options).Count(e => e.Refused is null));
        var (wall, used) = (watch.Elapsed.TotalSeconds, (Environment.CpuUsage.UserTime - processor).TotalSeconds);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"occupied {occupied:0.0}, first taxon {first:0.00} s"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{survey.Taxa} taxa: {wall:0.0} s, {used:0.0} s of processor; {given} of {11 * survey.Taxa} estimates given"));
    }

    // Each taxon lives in a round range of its own size and centre, in nine of ten squares of it; the later period has twice the records.
    internal static GroupSurvey Large(int taxa, double occupied)
    {
        var (squares, chance) = (Surveys.Board(50, 60), new Pcg(7));
        var (before, after) = (new List<(int, int, int)>(), new List<(int, int, int)>());
        for (var taxon = 0; taxon < taxa; taxon++)
        {
            var centre = squares[chance.NextIndex(squares.Length)].Centre;
            var radius = 10 * Math.Sqrt(squares.Length * occupied * 2.8 * chance.NextUnit() / Math.PI);
            for (var square = 0; square < squares.Length; square++)
            {
                if (PlanePoint.Km(squares[square].Centre, centre) > radius)
                    continue;
                if (chance.NextChance(0.8))
                    before.Add((square, taxon, 1 + chance.NextIndex(5)));
                if (chance.NextChance(0.9))
                    after.Add((square, taxon, 1 + chance.NextIndex(11)));
            }
        }

        return Surveys.Visited(squares, taxa, before, after);
    }
}
