using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;
using RangeMap.Server;

namespace RangeMap.Benchmarks;

/// <summary>
/// Presence maps at 10 km for four periods, of every taxon. First: the first question about a taxon since the server started,
/// which reads and unpacks its cube. Then: another set of periods each time, so that no answer is ready. Warm: the same again.
/// </summary>
internal static class FoldPresence
{
    public static async Task RunAsync(long rows)
    {
        var data = await SimulatedFolder.Of(rows).OpenAsync();
        var taxa = data.Taxa.Where(taxon => data.Cube(taxon).Cells.Length > 0).ToArray();
        var effort = await Timing.OfAsync("effort of both groups, once an edition", () => Task.FromResult(taxa.Select(taxon => data.Effort(taxon, SquareSize.Km10)).Count()), runs: 1);
        effort.Print();

        var cold = await SimulatedFolder.Of(rows).OpenAsync();
        foreach (var group in taxa.DistinctBy(taxon => taxon.Group))
            cold.Effort(cold.Find(group.Id), SquareSize.Km10);
        Latency first = new("first map of a taxon"), fold = new("map for other periods"), warm = new("the same map again");
        foreach (var taxon in taxa)
            first.Ask(() => Map(cold, taxon, 1980));
        for (var year = 1981; year < 1991; year++)
        {
            foreach (var taxon in taxa)
                fold.Ask(() => Map(cold, taxon, year));
            foreach (var taxon in taxa)
                warm.Ask(() => Map(cold, taxon, year));
        }

        first.Print();
        fold.Print();
        warm.Print();
    }

    private static PresenceMap Map(DataSnapshot data, Taxon taxon, int year) => AnswerPresence.Answer(data, new(
        data.Find(taxon.Id), SquareSize.Km10, Quality.Usable, FormattableString.Invariant($"../{year},{year + 1}/{year + 10},{year + 11}/{year + 20},{year + 21}/..")));
}
