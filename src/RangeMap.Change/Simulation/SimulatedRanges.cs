namespace RangeMap.Change;

/// <summary>Draws the ranges of all species and moves those that play a part.</summary>
internal static class SimulatedRanges
{
    private const double ClimateWeight = 0.7;

    internal static SimulatedTruth Draw(SimulatedLand land, IReadOnlyList<InventedSpecies> species, SimulatedOptions options)
    {
        int eastern = land.EasternPort(), southern = land.SouthernPort();
        var abundance = new float[species.Count][];
        var from = new float[species.Count][];
        var until = new float[species.Count][];
        for (var s = 0; s < species.Count; s++)
        {
            var chance = new Pcg(options.Seed, 1000 + (ulong)s);
            abundance[s] = AbundanceOf(species[s], land, chance.NextUInt());
            from[s] = Filled(land, float.NegativeInfinity);
            until[s] = Filled(land, float.PositiveInfinity);
            Act(species[s].Role, (eastern, southern), land, options, (from[s], until[s]), ref chance);
        }

        return new(abundance, from, until)
        {
            ArrivingPort = eastern,
            ArrivingLands = options.FirstYear + options.LandingAfter,
            ArrivingSpeed = options.ArrivingSpeed,
            StallingPort = southern,
            Stalls = options.FirstYear + options.StallsAfter,
        };
    }

    // Habitat is a smooth surface, climate a slope from south to north; the best cells, as many as the species' share, are its range.
    private static float[] AbundanceOf(InventedSpecies species, SimulatedLand land, ulong seed)
    {
        var habitat = new SmoothField(seed, 110);
        var fitness = new double[land.Cells.Count];
        for (var i = 0; i < fitness.Length; i++)
        {
            var cell = land.Cells[i];
            fitness[i] = habitat.At(cell.X, cell.Y) + ClimateWeight * species.Warmth * (0.5 - land.Height(cell));
        }

        var sorted = fitness.Order().ToArray();
        var lowest = sorted[Math.Clamp((int)((1 - species.Share) * sorted.Length), 0, sorted.Length - 1)];
        var span = Math.Max(1e-9, sorted[^1] - lowest);
        return Array.ConvertAll(fitness, f => f < lowest ? 0f : (float)(0.25 + 0.75 * (f - lowest) / span));
    }

    private static void Act(
        InventedRole role, (int Eastern, int Southern) ports, SimulatedLand land, SimulatedOptions options, (float[] From, float[] Until) times, ref Pcg chance)
    {
        for (var i = 0; i < land.Cells.Count; i++)
        {
            switch (role)
            {
                case InventedRole.Arriving:
                    times.From[i] = (float)Reached(options.LandingAfter, options.ArrivingSpeed, land, ports.Eastern, i, options, ref chance);
                    break;
                case InventedRole.Stalling:
                    var reached = Reached(options.StallingLandsAfter, options.StallingSpeed, land, ports.Southern, i, options, ref chance);
                    times.From[i] = reached < options.FirstYear + options.StallsAfter ? (float)reached : float.PositiveInfinity;
                    break;
                case InventedRole.Retreating:
                    var lost = (land.Cells[i].Y - land.South) / options.RetreatSpeed + options.ArrivalDeviation * chance.NextNormal();
                    times.Until[i] = (float)(options.FirstYear + lost);
                    break;
                case InventedRole.Resident:
                default:
                    break;
            }
        }
    }

    // The port itself is reached on landing; every other cell after its distance over the speed, give or take.
    private static double Reached(double landsAfter, double speed, SimulatedLand land, int port, int cell, SimulatedOptions options, ref Pcg chance)
    {
        var lands = options.FirstYear + landsAfter;
        var scatter = options.ArrivalDeviation * chance.NextNormal();
        return cell == port ? lands : Math.Max(lands, lands + land.Cells[cell].DistanceKm(land.Cells[port]) / speed + scatter);
    }

    private static float[] Filled(SimulatedLand land, float value)
    {
        var values = new float[land.Cells.Count];
        Array.Fill(values, value);
        return values;
    }
}
