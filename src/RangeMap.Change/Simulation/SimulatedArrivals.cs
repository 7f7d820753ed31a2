namespace RangeMap.Change;

/// <summary>
/// Squares of an invented country that a species reaches at a known speed, with every visit to them, for judging the arrival model: a coast, gaps in the land, recording that
/// grows and gathers round towns, and lists of different length. After the design of Gilbert and Liebhold 2010, Ecography 33:809-817.
/// </summary>
public sealed record SimulatedArrivals
{
    private const double TownReachKm = 25;
    private const int Towns = 14;

    /// <summary>True speed, km a year.</summary>
    public double SpeedKmPerYear { get; init; } = 5;

    /// <summary>Standard deviation of the year of arrival of a square, years.</summary>
    public double ArrivalDeviation { get; init; } = 1.5;

    /// <summary>Years of recording, from year 0.</summary>
    public int Years { get; init; } = 40;

    /// <summary>Side of the squares, km.</summary>
    public double SideKm { get; init; } = 10;

    /// <summary>Chance that a list of middling length finds the species where it is.</summary>
    public double Detection { get; init; } = 0.5;

    /// <summary>Visits a square and year at a town in the last year; a tenth of it far from towns.</summary>
    public double VisitsAtTown { get; init; } = 1.5;

    /// <summary>Visits of the last year for each visit of the first.</summary>
    public double Growth { get; init; } = 5;

    /// <summary>Side of the country, km.</summary>
    public double CountryKm { get; init; } = 260;

    /// <summary>Where the species lands: on the coast in the middle of the south side.</summary>
    public PlanePoint Origin => new(CountryKm / 2, 0);

    /// <summary>The squares with their visits, and the true year of arrival of each.</summary>
    /// <param name="seed">The same seed gives the same country.</param>
    public (IReadOnlyList<ArrivalSite> Sites, IReadOnlyList<double> Arrivals) Make(ulong seed)
    {
        var chance = new Pcg(seed, 11);
        var towns = Enumerable.Range(0, Towns).Select(_ => new PlanePoint(chance.NextUnit() * CountryKm, chance.NextUnit() * CountryKm)).ToArray();
        var bay = new PlanePoint(CountryKm * (0.2 + 0.6 * chance.NextUnit()), CountryKm * (0.4 + 0.4 * chance.NextUnit()));
        var (sites, arrivals) = (new List<ArrivalSite>(), new List<double>());
        for (var y = SideKm / 2; y < CountryKm; y += SideKm)
        {
            for (var x = SideKm / 2; x < CountryKm; x += SideKm)
            {
                var place = new PlanePoint(x, y);
                // A bay, and single squares without land.
                if (PlanePoint.Km(place, bay) < CountryKm / 9 || chance.NextChance(0.04))
                    continue;
                var arrival = PlanePoint.Km(place, Origin) / SpeedKmPerYear + ArrivalDeviation * chance.NextNormal();
                sites.Add(new(x, y, Visits(place, towns, arrival, ref chance)));
                arrivals.Add(arrival);
            }
        }

        return (sites, arrivals);
    }

    private List<ArrivalVisit> Visits(PlanePoint place, PlanePoint[] towns, double arrival, ref Pcg chance)
    {
        var nearest = towns.Min(town => PlanePoint.Km(place, town)) / TownReachKm;
        var atLast = VisitsAtTown * (0.1 + 0.9 / (1 + nearest * nearest));
        var visits = new List<ArrivalVisit>();
        for (var year = 0; year < Years; year++)
        {
            var expected = atLast * (1 + (Growth - 1) * year / Math.Max(1, Years - 1)) / Growth;
            // Up to four visits a year, each as likely as the others.
            for (var visit = 0; visit < 4; visit++)
            {
                if (!chance.NextChance(Math.Min(1, expected / 4)))
                    continue;
                var length = 1 + chance.NextIndex(12);
                var likely = Math.Min(0.98, Detection * Math.Log(1 + length) / Math.Log(7));
                var found = year >= arrival && chance.NextChance(likely);
                visits.Add(new(year, Math.Max(1, length + (found ? 1 : 0)), found));
            }
        }

        return visits;
    }
}
