using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.TestKit;

namespace RangeMap.Server.Tests.Demo;

/// <summary>The demo's world is invented, so its truth is known: what is measured must come near it.</summary>
public sealed class DemoTruthTests(DemoTruthTests.MadeDemo demo) : IClassFixture<DemoTruthTests.MadeDemo>
{
    [Fact]
    public void TheSpeedOfTheArrivingSpeciesIsFound()
    {
        var spread = MeasureSpread.Answer(demo.Data, demo.Data.Find("cindrava-adventa"), SquareSize.Km10, null);
        var speed = spread.Report.Estimators.Single(estimate => estimate.Method == SpreadMethods.FrontQuantile);
        Assert.True(speed.Refused is null, speed.Refused);
        // A 95 % interval misses one time in twenty, and squares are found up to a few years late, which slows the front seen:
        // the true speed may lie a tenth of itself outside the interval.
        var tolerance = 0.1 * MadeDemo.Options.ArrivingSpeed;
        Assert.InRange(MadeDemo.Options.ArrivingSpeed, speed.Low!.Value - tolerance, speed.High!.Value + tolerance);
    }

    [Fact]
    public void TheArrivalModelIsListedWhereAskedAndEstimatorsByVisitsAlways()
    {
        var (data, taxon) = (demo.Data, demo.Data.Find("cindrava-adventa"));
        var plain = MeasureSpread.Answer(data, taxon, SquareSize.Km10, null).Report;
        var asked = MeasureSpread.Answer(data, taxon, SquareSize.Km10, null, withModel: true).Report;
        Assert.DoesNotContain(plain.Estimators, estimate => estimate.Method == SpreadMethods.ArrivalModel);
        Assert.Equal(plain.Estimators, asked.Estimators.Where(estimate => estimate.Method != SpreadMethods.ArrivalModel));
        // The visits miss the species now and then, which makes the speed by intervals high: it need not hold the truth, but must be near it.
        Assert.InRange(asked.By(SpreadMethods.IntervalCensored).KmPerYear!.Value, 0.8 * MadeDemo.Options.ArrivingSpeed, 1.5 * MadeDemo.Options.ArrivingSpeed);
        Assert.InRange(asked.By(SpreadMethods.ArrivalModel).KmPerYear!.Value, 0.8 * MadeDemo.Options.ArrivingSpeed, 1.2 * MadeDemo.Options.ArrivingSpeed);
        Assert.Equal(ArrivalSpeed.Of(ForecastSpread.Fit(data, taxon, SquareSize.Km10).Answer.Fit!)!.Value.KmPerYear, asked.By(SpreadMethods.ArrivalModel).KmPerYear);
    }

    [Fact]
    public void TheSouthernLimitOfTheRetreatingSpeciesMovedNorth()
    {
        var early = SouthernLimitKm("1985/1994");
        var late = SouthernLimitKm("2015/2024");
        // The middles of the periods are 30 years apart: 180 km at 6 km a year. Half of it must show, since more recorders later find more stragglers.
        Assert.True(late - early >= 90, FormattableString.Invariant($"from {early} km to {late} km"));
    }

    [Fact]
    public void TheForecastOfTheArrivingSpeciesKnowsItsSpeedAndShowsItsRecord()
    {
        var answer = ForecastSpread.Answer(demo.Data, demo.Data.Find("cindrava-adventa"), SquareSize.Km10, null);
        var speed = ArrivalSpeed.Of(answer.Fit)!.Value;
        var tolerance = 0.1 * MadeDemo.Options.ArrivingSpeed;
        Assert.InRange(MadeDemo.Options.ArrivingSpeed, speed.Interval.Low - tolerance, speed.Interval.High + tolerance);
        Assert.True(answer.Forecast.Low <= answer.Forecast.Expected && answer.Forecast.Expected <= answer.Forecast.High);
        Assert.NotEmpty(answer.Search);
        Assert.Contains(answer.Hindcast, cut => cut.Model is not null);
        Assert.All(answer.Hindcast, cut => Assert.NotEqual(cut.Model is null, cut.Refused is null));
    }

    [Fact]
    public void TheTrueFrontRunsWithinTheBandThatIsDrawn()
    {
        var (squares, held) = (0, 0);
        for (var year = 2012; year <= 2025; year++)
        {
            var front = DrawFronts.Answer(demo.Data, demo.Data.Find("cindrava-adventa"), SquareSize.Km10, year.ToString(System.Globalization.CultureInfo.InvariantCulture)).Fronts.Single();
            Assert.NotEmpty(front.Lines);
            var band = front.Band.ToHashSet();
            // The middle of the seasons of recording; a square lies on the true front when its mean arrival lies within a third of a year of it.
            var onFront = demo.TrueMeans.Where(square => Math.Abs(square.Value - year - MidSeason) < 1 / 3.0).ToList();
            Assert.True(onFront.Count >= 10, $"{onFront.Count} squares on the true front of {year}");
            var within = onFront.Count(square => band.Contains(square.Key));
            // The interval is that of a single place; squares beside each other err together, so a single year may lie lower than all of them.
            Assert.True(within >= 0.8 * onFront.Count, $"{within} of {onFront.Count} squares of the true front of {year} lie in the band");
            Assert.True(front.Band.Count < 0.25 * demo.TrueMeans.Count, $"the band is {front.Band.Count} squares wide and tells little");
            (squares, held) = (squares + onFront.Count, held + within);
        }

        TestContext.Current.SendDiagnosticMessage("{0} of {1} squares of the true fronts lie in their bands", held, squares);
        Assert.True(held >= 0.9 * squares, $"{held} of {squares} squares of the true fronts lie in their bands");
    }

    [Fact]
    public void SquaresNamedAsNextAreReachedThreeTimesAsOftenAsSquaresBesideAFind()
    {
        var answer = ForecastSpread.Answer(demo.Data, demo.Data.Find("cindrava-adventa"), SquareSize.Km10, null);
        var next = answer.Ahead.Select(square => answer.Squares[square.Square]).ToList();
        var finds = Enumerable.Range(0, answer.Squares.Count).Where(i => answer.Fit.Sites[i].FirstFound is not null).Select(i => answer.Squares[i]).ToHashSet();
        var beside = answer.Forecast.Squares.Select(square => answer.Squares[square.Square]).Where(square => Around(square).Any(finds.Contains)).ToList();
        double Reached(List<Square> squares) => squares.Average(square =>
            demo.TrueArrivals.TryGetValue(square, out var arrival) && arrival >= answer.Forecast.Now + MidSeason && arrival < answer.Forecast.Year + MidSeason ? 1 : 0);
        Assert.True(Reached(next) >= 3 * Reached(beside), FormattableString.Invariant($"{Reached(next):0.000} against {Reached(beside):0.000}"));
    }

    /// <summary>
    /// Of squares that may be asked about, every seventh: what is expected there lives there far more often than any other species that was not found there
    /// (docs/methods/expected-species.md tells the numbers), and no more seldom than its chance says.
    /// </summary>
    [Fact]
    public void ExpectedSpeciesAreTrulyThereMuchMoreOftenThanOthersThatWereNotFound()
    {
        var world = new SimulatedWorld(BaseLand.Read(), MadeDemo.Options);
        var index = world.Species.Index().ToDictionary(pair => InventedTaxonList.IdOf(pair.Item.Name), pair => pair.Index);
        var (expected, others) = (new List<(double Chance, bool There)>(), new List<bool>());
        for (var cell = 0; cell < world.Land.Cells.Count; cell += 7)
        {
            var land = world.Land.Cells[cell];
            var square = new Square(land.Grid, SquareSize.Km10, land.Easting, land.Northing);
            var named = KnowSquare.Answer(demo.Data, square, Quality.Usable).Expected.ToDictionary(species => species.Taxon.Id, species => species.Chance.Probability);
            Assert.DoesNotContain("tindorqua-secreta", named.Keys);
            bool There(string id) => world.Truth.Present(index[id], cell, MadeDemo.Options.FirstYear + MadeDemo.Options.Years);
            expected.AddRange(named.Select(species => (species.Value, There(species.Key))));
            others.AddRange(demo.Data.Taxa.Where(taxon => index.ContainsKey(taxon.Id) && !named.ContainsKey(taxon.Id) && demo.Data.Cube(taxon, SquareSize.Km10).In(square).IsEmpty).Select(taxon => There(taxon.Id)));
        }

        double hit = expected.Average(species => species.There ? 1 : 0), chance = expected.Average(species => species.Chance), other = others.Average(there => there ? 1 : 0);
        var told = FormattableString.Invariant($"{expected.Count} expected, chance {chance:0.000}, there {hit:0.000}; others {others.Count}, there {other:0.000}");
        TestContext.Current.TestOutputHelper?.WriteLine(told);
        Assert.True(expected.Count >= 200 && hit >= 2 * other, told);
        Assert.True(hit >= chance - 0.05, told);
    }

    [Fact]
    public async Task ARecordFarAheadOfTheFrontIsDoubtedAndOneBehindItIsNot()
    {
        using var copy = new TemporaryFolder();
        foreach (var file in Directory.GetFiles(demo.Folder.Path))
            File.Copy(file, Path.Combine(copy.Path, Path.GetFileName(file)));
        // Only taxa with a first possible year arrive.
        var taxa = copy.Write("taxa.csv", "taxonID,scientificName,group,firstYear\ncindrava-adventa,Cindrava adventa,ember-wings,2001\n");
        var rows = copy.Write("rows.csv", "scientificName,eventDate,gridReference,recordedBy\nCindrava adventa,2010-07-01,NH6846,A. Name\nCindrava adventa,2024-07-01,TG2208,A. Name\nCindrava rufa,2010-07-01,NH6846,A. Name\n");
        Assert.Equal(0, (await CommandRun.OfAsync("taxa", taxa, "--data", copy.Path)).Exit);
        var import = await CommandRun.OfAsync("import", rows, "--dataset", "late", "--data", copy.Path, "--json");
        Assert.Equal(1, import.Json["doubts"]!["aheadOfFront"]!.GetValue<int>());
    }

    [Fact]
    public void TheScreeningOfAllTaxaFindsTheRetreatAndLittleElse()
    {
        var screening = MeasureChange.OfAll(demo.Data, ChangeQuestion.Of(null, "1990/1999", "2015/2024", null));
        var south = screening.ToDictionary(change => change.Taxon.Id, change => change.Estimates.Single(estimate => estimate.Method == ChangeMethods.MarginSouth));
        // Outwards is positive: the southern limit drew back by 6 km a year over the 25 years between the middles of the periods.
        var truth = -MadeDemo.Options.RetreatSpeed * 25;
        var retreat = south["ostraphyx-nivalis"];
        Assert.True(retreat.High < 0, $"{retreat.Value} km, {retreat.Low} to {retreat.High}; {retreat.Refused}");
        Assert.InRange(truth, retreat.Low!.Value - 15, retreat.High!.Value + 15);

        // What never changes in truth must seldom seem to: at 5 % of about 50 taxa, more than 8 are chosen by chance one time in a thousand.
        foreach (var method in (string[])[ChangeMethods.MarginSouth, ChangeMethods.MarginNorth, ChangeMethods.RelativeIndex])
        {
            var stable = screening.Where(change => !Changing.Contains(change.Taxon.Id)).Select(change => change.Estimates.Single(estimate => estimate.Method == method)).ToList();
            Assert.True(stable.Count(estimate => estimate.Refused is null) >= 20, method);
            Assert.True(stable.Count(estimate => estimate.TellsChange) <= 8, $"{method}: {stable.Count(estimate => estimate.TellsChange)} of {stable.Count(estimate => estimate.Refused is null)}");
        }
    }

    [Theory]
    [InlineData(SquareSize.M100)]
    [InlineData(SquareSize.Km1)]
    [InlineData(SquareSize.Km2)]
    [InlineData(SquareSize.Km5)]
    public void TheSensitiveSpeciesIsNeverShownFinerThanTenKilometres(SquareSize size)
    {
        Assert.Empty(Map("tindorqua-secreta", size).Squares);
        Assert.NotEmpty(Map("tindorqua-secreta", SquareSize.Km10).Squares);
    }

    [Fact]
    public void TheMapOfThePairsAggregateIsItsMembersAndItsOwn()
    {
        var own = demo.RowsNamed("Cindrava gemella agg.");
        Assert.True(own > 0);
        Assert.Equal(own + RecordsOf("cindrava-gemella") + RecordsOf("cindrava-gemellina"), RecordsOf("cindrava-gemella-agg"));
    }

    [Fact]
    public void AlmostEveryInventedRowComesIn()
    {
        Assert.Equal(MadeDemo.Options.Rows, demo.Answer.Figures.Read);
        Assert.Equal(demo.Answer.Figures.Read, demo.Answer.Figures.Accepted + demo.Answer.Figures.Refused);
        Assert.True(demo.Answer.Figures.Refused < MadeDemo.Options.Rows / 100);
        Assert.True(MakeDemo.IsMade(demo.Folder));
    }

    [Fact]
    public async Task RealDataAreNotMixedWithTheDemo()
    {
        using var real = await DataDirectory.WithTaxaAsync();
        (await CommandRun.OfAsync("demo", "--data", real.Data, "--urls", "http://127.0.0.1:0")).Failed(1, "not the demo's");
    }

    /// <summary>Half of all visits of a year are made by then.</summary>
    private const double MidSeason = 0.58;

    private static IEnumerable<Square> Around(Square square) =>
        from east in (int[])[-1, 0, 1]
        from north in (int[])[-1, 0, 1]
        let corner = (East: square.Easting + east * square.SideMetres, North: square.Northing + north * square.SideMetres)
        where (east, north) != (0, 0) && corner.East >= 0 && corner.North >= 0
        select new Square(square.Grid, square.Size, corner.East, corner.North);

    /// <summary>Those that arrive, stall, retreat, or belong to the pair.</summary>
    private static readonly string[] Changing =
        ["cindrava-adventa", "velurqua-viatrix", "ostraphyx-nivalis", "cindrava-gemella", "cindrava-gemellina", "cindrava-gemella-agg"];

    private PresenceMap Map(string taxon, SquareSize size, string periods = "", string quality = "usable") =>
        AnswerPresence.Answer(demo.Data, PresenceQuestion.Of(demo.Data, taxon, size.ToText(), periods, quality));

    /// <summary>Records of every quality but rejected ones, wherever they lie.</summary>
    private int RecordsOf(string taxon) => demo.Data.Summaries.Single(summary => summary.Taxon.Id == taxon).Records;

    /// <summary>Northing that a tenth of the occupied British squares lie south of, km.</summary>
    private double SouthernLimitKm(string period)
    {
        var northings = Map("ostraphyx-nivalis", SquareSize.Km10, period).Squares.Where(found => found.Square.Grid == GridId.British).Select(found => found.Square.Northing / 1000.0).Order().ToList();
        Assert.True(northings.Count >= 20, $"{northings.Count} squares in {period}");
        return northings[northings.Count / 10];
    }

    /// <summary>The demo, made once for the tests of this class.</summary>
    public sealed class MadeDemo : IAsyncLifetime
    {
        private readonly TemporaryFolder _folder = new();

        /// <summary>The demo's own world with fewer records, so that the test is quick.</summary>
        public static SimulatedOptions Options { get; } = new() { Rows = 60_000 };

        internal DataFolder Folder { get; private set; } = null!;

        internal DataSnapshot Data { get; private set; } = null!;

        internal ImportAnswer Answer { get; private set; } = null!;

        /// <summary>When the arriving species reached each square that it lives in, years with a fraction.</summary>
        internal IReadOnlyDictionary<Square, double> TrueArrivals { get; private set; } = null!;

        /// <summary>The same without the scatter of single squares.</summary>
        internal IReadOnlyDictionary<Square, double> TrueMeans { get; private set; } = null!;

        /// <inheritdoc/>
        public async ValueTask InitializeAsync()
        {
            Folder = DataFolder.Open(_folder.Path);
            Answer = await MakeDemo.RunAsync(Folder, Options, FixedClock.Winter2026);
            Data = new CurrentData(Folder.Database, FixedClock.Winter2026).Now();
            TrueArrivals = File.ReadLines(Path.Combine(_folder.Path, "invented", "truth.csv")).Select(row => row.Split(',')).Where(cells => cells[0] == "cindrava-adventa")
                .ToDictionary(cells => Ask.Square(cells[2]), cells => double.Parse(cells[3], System.Globalization.CultureInfo.InvariantCulture));
            var (port, lands) = TrueArrivals.MinBy(arrival => arrival.Value);
            var origin = Arrival.CommonCentre(port);
            TrueMeans = TrueArrivals.Keys.ToDictionary(square => square, square => lands + Km(origin, Arrival.CommonCentre(square)) / Options.ArrivingSpeed);
        }

        private static double Km(EastNorth a, EastNorth b) => Math.Sqrt(Math.Pow(a.Easting - b.Easting, 2) + Math.Pow(a.Northing - b.Northing, 2)) / 1000;

        /// <inheritdoc/>
        public ValueTask DisposeAsync()
        {
            _folder.Dispose();
            return ValueTask.CompletedTask;
        }

        /// <summary>Rows of the invented file with this name that were neither refused nor rejected.</summary>
        internal int RowsNamed(string name)
        {
            var rows = File.ReadLines(Path.Combine(_folder.Path, "invented", "records.csv")).Select(row => row.Split(','));
            var refused = new Store.BatchStore(Folder.Database).Refusals(Answer.Figures.Batch).Count(refusal => refusal.RawText.Contains(name, StringComparison.Ordinal));
            return rows.Count(cells => cells[1] == name && cells[^1] != "rejected") - refused;
        }
    }
}
