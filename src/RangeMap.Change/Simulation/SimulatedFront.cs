namespace RangeMap.Change;

/// <summary>
/// First records of an invented species that spreads at a known speed over a quarter of a plane, for judging the
/// estimators. A square at distance d is reached at d / speed plus scatter, and found on a visit after that.
/// </summary>
public sealed record SimulatedFront
{
    private const double PatchReachKm = 20;

    /// <summary>True speed, km a year.</summary>
    public double SpeedKmPerYear { get; init; } = 5;

    /// <summary>Year in which the speed changes; infinite for one speed throughout.</summary>
    public double ChangeYear { get; init; } = double.PositiveInfinity;

    /// <summary>True speed from the change on, km a year; 0 for a front that stands still.</summary>
    public double LaterSpeedKmPerYear { get; init; }

    /// <summary>Standard deviation of the year of arrival of a square, years.</summary>
    public double ArrivalDeviation { get; init; } = 1.5;

    /// <summary>Number of years of recording, from year 0.</summary>
    public int Years { get; init; } = 40;

    /// <summary>Side of the squares, km.</summary>
    public double SideKm { get; init; } = 10;

    /// <summary>How squares are visited.</summary>
    public DetectionScheme Scheme { get; init; }

    /// <summary>The origin from which the species spreads: the corner of the quarter plane.</summary>
    public static SpreadOrigin Origin { get; } = new(0, 0);

    /// <summary>The first record of each square that has one.</summary>
    /// <param name="seed">The same seed gives the same records.</param>
    public IReadOnlyList<ArrivalPoint> FirstRecords(ulong seed)
    {
        var chance = new Pcg(seed, 7);
        // Land goes on beyond the reach of the front and of its scatter, so that no edge holds it up.
        var reach = Math.Max(SpeedKmPerYear, LaterSpeedKmPerYear) * (Years + 4 * ArrivalDeviation);
        var side = (int)Math.Ceiling(reach / SideKm);
        var places = PlacesWithin(SpeedKmPerYear * Years, ref chance);
        var found = new List<ArrivalPoint>();
        for (var square = 0; square < side * side; square++)
        {
            double x = (square % side + 0.5) * SideKm, y = (square / side + 0.5) * SideKm;
            var arrival = Reached(Math.Sqrt(x * x + y * y)) + ArrivalDeviation * chance.NextNormal();
            if (FirstFound(arrival, Nearness(places, x, y), ref chance) is { } year)
                found.Add(new(x, y, year));
        }

        return found;
    }

    /// <summary>Every visit, with what it found; the law is that of <see cref="FirstRecords"/>, the draws are others.</summary>
    /// <param name="seed">The same seed gives the same visits.</param>
    public IReadOnlyList<SquareVisit> Visits(ulong seed)
    {
        var chance = new Pcg(seed, 13);
        var side = (int)Math.Ceiling(Math.Max(SpeedKmPerYear, LaterSpeedKmPerYear) * (Years + 4 * ArrivalDeviation) / SideKm);
        var places = PlacesWithin(SpeedKmPerYear * Years, ref chance);
        var found = Scheme == DetectionScheme.Full ? 1 : 0.5;
        var visits = new List<SquareVisit>();
        for (var square = 0; square < side * side; square++)
        {
            double x = (square % side + 0.5) * SideKm, y = (square / side + 0.5) * SideKm;
            var arrival = Reached(Math.Sqrt(x * x + y * y)) + ArrivalDeviation * chance.NextNormal();
            var nearness = Nearness(places, x, y);
            for (var year = 0; year < Years; year++)
            {
                if (chance.NextChance(VisitChance(year, nearness) / found))
                    visits.Add(new(x, y, year, year >= arrival && chance.NextChance(found)));
            }
        }

        return visits;
    }

    private double Reached(double distance)
    {
        var year = distance / SpeedKmPerYear;
        return year <= ChangeYear ? year : ChangeYear + (distance - SpeedKmPerYear * ChangeYear) / LaterSpeedKmPerYear;
    }

    private int? FirstFound(double arrival, double nearness, ref Pcg chance)
    {
        for (var year = 0; year < Years; year++)
        {
            if (chance.NextChance(VisitChance(year, nearness)) && year >= arrival)
                return year;
        }

        return null;
    }

    // The chance of a visit that would find the species if it were there.
    private double VisitChance(int year, double nearness) => Scheme switch
    {
        DetectionScheme.Full => 0.95,
        DetectionScheme.Thin => 0.1 * 0.5,
        DetectionScheme.Rising => (0.02 + 0.38 * year / Math.Max(1, Years - 1)) * 0.5,
        DetectionScheme.Patchy => (0.01 + 0.4 * nearness) * 0.5,
        _ => throw new InvalidOperationException($"The scheme {Scheme} is not known."),
    };

    private static (double X, double Y)[] PlacesWithin(double reach, ref Pcg chance)
    {
        var places = new (double, double)[12];
        for (var i = 0; i < places.Length; i++)
            places[i] = (chance.NextUnit() * reach, chance.NextUnit() * reach);
        return places;
    }

    // 1 at the nearest place, 1/2 at 20 km from it, 1/5 at 40 km.
    private static double Nearness((double X, double Y)[] places, double x, double y)
    {
        var nearest = places.Min(p => (p.X - x) * (p.X - x) + (p.Y - y) * (p.Y - y));
        return 1 / (1 + nearest / (PatchReachKm * PatchReachKm));
    }
}
