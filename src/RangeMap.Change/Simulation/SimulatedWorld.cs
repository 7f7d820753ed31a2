namespace RangeMap.Change;

/// <summary>
/// An invented country of recorders and species over some decades: which species lives where is known, and a stream
/// of observations tells what recorders with homes, habits and mistakes made of it.
/// </summary>
/// <remarks>
/// Everything is computed with whole numbers and the four exactly rounded operations and the square root, from seeded streams
/// of <see cref="Pcg"/>, so that a seed gives the same rows on every machine. A row costs no memory: the stream can be as
/// long as wanted. Rows come week by week; within a week in no order.
/// </remarks>
public sealed class SimulatedWorld
{
    // Visits without a find after which a week is given up.
    private const int FruitlessVisits = 2000;

    private readonly SimulatedOptions _options;
    private readonly SimulatedRecorders _recorders;

    /// <summary>Draws the world.</summary>
    /// <param name="land">Where it is.</param>
    /// <param name="options">What it is like; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public SimulatedWorld(SimulatedLand land, SimulatedOptions? options = null)
    {
        _options = options ?? new();
        _options.ThrowIfOutOfRange();
        Land = land;
        Truth = SimulatedRanges.Draw(land, Species, _options);
        _recorders = new(land, _options);
    }

    /// <summary>The land.</summary>
    public SimulatedLand Land { get; }

    /// <summary>The species, by index.</summary>
    public IReadOnlyList<InventedSpecies> Species { get; } = InventedScenario.Species;

    /// <summary>What is true.</summary>
    public SimulatedTruth Truth { get; }

    /// <summary>Index of the first species that plays a part.</summary>
    public int IndexOf(InventedRole role) => Species.Index().First(s => s.Item.Role == role).Index;

    /// <summary>Recorders active in a year: a seventh of all in the first year, all in the last, ever faster between.</summary>
    public int ActiveRecorders(int year)
    {
        var share = _options.Years == 1 ? 1 : (year - _options.FirstYear) / (double)(_options.Years - 1);
        return Math.Max(1, (int)(_options.Recorders * (1 + 2 * share + 4 * share * share) / 7));
    }

    /// <summary>
    /// The observations: as many as the options say, or fewer where the land holds too little to be seen. Each call
    /// gives the same stream.
    /// </summary>
    public IEnumerable<SimulatedObservation> Observations()
    {
        var chance = new Pcg(_options.Seed, 1);
        var lists = new VisitList(Land, Species, Truth);
        var seen = new List<SimulatedObservation>();
        long rows = 0, visits = 0;
        foreach (var (year, week, target) in Targets())
        {
            // Where nearly nothing is about, what is missing is made up in later weeks.
            var fruitless = 0;
            while (rows < target && fruitless < FruitlessVisits)
            {
                var visit = Visit(visits, year, week, ref chance);
                lists.Fill(seen, visit, year, week, ref chance);
                fruitless = seen.Count == 0 ? fruitless + 1 : 0;
                visits += seen.Count == 0 ? 0 : 1;
                for (var i = 0; i < seen.Count && rows < target; i++, rows++)
                    yield return seen[i];
            }
        }
    }

    // Rows due by the end of each week: in proportion to the recorders of the year and to what is about in the week.
    private IEnumerable<(int Year, int Week, long Target)> Targets()
    {
        var busy = Enumerable.Range(1, 52).Select(w => Species.Sum(s => s.Seasons.Max(x => x.Level(w)))).ToArray();
        var years = Enumerable.Range(_options.FirstYear, _options.Years).ToArray();
        var total = years.Sum(y => (double)ActiveRecorders(y)) * busy.Sum();
        double due = 0;
        foreach (var year in years)
        {
            for (var week = 1; week <= 52; week++)
            {
                due += ActiveRecorders(year) * busy[week - 1];
                yield return (year, week, (long)(_options.Rows * due / total + 0.5));
            }
        }
    }

    private SimulatedVisit Visit(long number, int year, int week, ref Pcg chance)
    {
        var recorder = SimulatedRecorders.Next(ActiveRecorders(year), ref chance);
        var index = _recorders.CellOfVisit(recorder, ref chance);
        var cell = Land.Cells[index];
        var day = new DateOnly(year, 1, 1).DayNumber + (week - 1) * 7 + chance.NextIndex(7);
        var (easting, northing) = PlaceIn(cell, ref chance);
        var recent = (year - _options.FirstYear) / (double)_options.Years;
        var precision = RecordingHabits.Precision(recent, ref chance);
        return new(
            number, day, index, cell.Grid, easting, northing, precision, recorder,
            RecordingHabits.Written(recent, ref chance), precision <= 100 && chance.NextChance(0.3 + 0.4 * recent));
    }

    // Recorders go to a dozen sites of a cell again and again, 1 km across and fixed by the seed, the first ones most.
    private (int Easting, int Northing) PlaceIn(LandCell cell, ref Pcg chance)
    {
        var (easting, northing) = (cell.Easting + LandCell.SideMetres / 2, cell.Northing + LandCell.SideMetres / 2);
        for (var tries = 0; tries < 6; tries++)
        {
            var u = chance.NextUnit();
            var site = new Pcg(_options.Seed + (ulong)(12 * u * u), (ulong)cell.Easting * 2_000_003 + (ulong)cell.Northing);
            easting = cell.Easting + site.NextIndex(10) * 1000 + chance.NextIndex(1000);
            northing = cell.Northing + site.NextIndex(10) * 1000 + chance.NextIndex(1000);
            if (Land.IsLand(cell, easting, northing))
                break;
        }

        return (easting, northing);
    }
}
