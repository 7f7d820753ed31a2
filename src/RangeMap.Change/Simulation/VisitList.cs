namespace RangeMap.Change;

/// <summary>Decides which species of a cell are seen on a visit, and what is noted of each.</summary>
internal sealed class VisitList
{
    // Stray single notes, short walks, and thorough lists: their share of visits and the effort of each.
    private static readonly (double UpTo, double Effort)[] Efforts = [(0.25, 0.12), (0.75, 0.45), (1, 1)];

    private readonly IReadOnlyList<InventedSpecies> _species;
    private readonly SimulatedTruth _truth;
    private readonly int[][] _living;
    private readonly float[][] _levels;
    private readonly int[] _twins;

    internal VisitList(SimulatedLand land, IReadOnlyList<InventedSpecies> species, SimulatedTruth truth)
    {
        (_species, _truth) = (species, truth);
        var all = Enumerable.Range(0, species.Count).ToArray();
        _living = [.. Enumerable.Range(0, land.Cells.Count).Select(cell => all.Where(s => truth.Abundance(s, cell) > 0).ToArray())];
        _levels = [.. species.Select(s => Enumerable.Range(1, 52).Select(w => (float)(s.Ease * s.Seasons.Max(x => x.Level(w)))).ToArray())];
        _twins = [.. species.Select(s => all.FirstOrDefault(i => species[i].Name == s.ConfusedWith, -1))];
    }

    /// <summary>Replaces the content of the list by what was seen on the visit.</summary>
    internal void Fill(List<SimulatedObservation> seen, in SimulatedVisit visit, int year, int week, ref Pcg chance)
    {
        seen.Clear();
        var effort = EffortOf(ref chance);
        var time = year + (week - 0.5) / 52;
        foreach (var species in _living[visit.Cell])
        {
            var likely = effort * _levels[species][week - 1];
            if (likely > 0 && chance.NextChance(likely * _truth.Abundance(species, visit.Cell)) && _truth.Present(species, visit.Cell, time))
                seen.Add(Observe(visit, species, week, ref chance));
        }
    }

    private static double EffortOf(ref Pcg chance)
    {
        var u = chance.NextUnit();
        foreach (var (upTo, effort) in Efforts)
        {
            if (u < upTo)
                return effort;
        }

        return Efforts[^1].Effort;
    }

    private SimulatedObservation Observe(in SimulatedVisit visit, int index, int week, ref Pcg chance)
    {
        var species = _species[index];
        var season = StageOf(species, week, ref chance);
        var evidence = RecordingHabits.Evidence(ref chance);
        var mistaken = _twins[index] >= 0 && evidence != InventedEvidence.Specimen && chance.NextChance(0.04);
        return new(
            visit,
            index,
            mistaken ? _twins[index] : index,
            species.Aggregate is not null && chance.NextChance(RecordingHabits.AggregateShare(evidence)),
            season.Stage,
            RecordingHabits.Sex(season.Stage, ref chance),
            RecordingHabits.Count(ref chance),
            chance.NextChance(0.03) ? (float)(season.LeastMm + (season.MostMm - season.LeastMm) * chance.NextUnit()) : null,
            chance.NextChance(0.1) ? chance.NextIndex(InventedScenario.Plants.Count) : null,
            evidence,
            RecordingHabits.Review(evidence, mistaken, ref chance));
    }

    private static StageSeason StageOf(InventedSpecies species, int week, ref Pcg chance)
    {
        // By index: an enumerator of an interface would cost memory on every row.
        var seasons = species.Seasons;
        double total = 0;
        for (var i = 0; i < seasons.Count; i++)
            total += seasons[i].Share * seasons[i].Level(week);

        var left = total * chance.NextUnit();
        for (var i = 0; i < seasons.Count - 1; i++)
        {
            left -= seasons[i].Share * seasons[i].Level(week);
            if (left < 0)
                return seasons[i];
        }

        return seasons[^1];
    }
}
