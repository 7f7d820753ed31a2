using RangeMap.Grids;

namespace RangeMap.Records.Tests;

public sealed class PlaceCheckTests
{
    // Invented geography: 100 km squares stand for regions.
    private sealed class SquareAreas : IKnownAreas
    {
        public int Asked { get; private set; }

        public double? KmOutside(string area, Square square)
        {
            Asked++;
            return area switch { "Westland" => square.ToString().StartsWith("SU", StringComparison.Ordinal) ? 0 : 40, "Farland" => 300, _ => null };
        }

        public bool? Covers(string area, Square square) => area == "Farland" ? false : null;
    }

    [Theory]
    [InlineData("Westland", "SU12", false)]
    [InlineData("Westland; Farland", "TQ38", true)]
    [InlineData("Atlantis", "TQ38", false)]
    [InlineData("Atlantis; Westland", "TQ38", true)]
    [InlineData("not Farland", "TQ38", false)]
    public void APlaceOutsideTheKnownAreaIsInDoubtUnlessNobodyKnowsTheArea(string area, string square, bool found) =>
        Assert.Equal(found, Checking.Find(Known(area, square), Checking.Context with { Areas = new SquareAreas() }) == Doubts.OutsideKnownArea);

    [Fact]
    public void TheWordsTellByHowManyKilometres() => Assert.Equal(
        "TQ38 lies 40 km outside the area from which Fictus ruber is known (nearest: Westland).",
        Checking.Words(Known("Westland; Farland", "TQ38"), Doubts.OutsideKnownArea, Checking.Context with { Areas = new SquareAreas() }));

    [Fact]
    public void AMarginOfKilometresIsGiven()
    {
        var context = Checking.Context with { Areas = new SquareAreas(), Limits = new() { AreaMarginKm = 50 } };

        Assert.Equal(Doubts.None, Checking.Find(Known("Westland", "TQ38"), context));
    }

    // D and G: absences from islands are common practice, no source.
    [Theory]
    [InlineData("D", "Scilly", true)]
    [InlineData("D", "Shetland", true)]
    [InlineData("D", "Orkney", false)]
    [InlineData("G", "Orkney", true)]
    [InlineData("G", "Outer Hebrides", true)]
    [InlineData("G", null, false)]
    public void AnIslandWhereTheSpeciesIsNotKnownIsInDoubt(string letter, string? island, bool found)
    {
        var context = Checking.Context with { IslandOf = _ => island };
        var record = Checking.Record(letter);

        Assert.Equal(found, Checking.Find(record, context) == Doubts.OutsideKnownArea);
        if (found)
            Assert.Equal($"Species {letter} is not known from {island}, where TQ38 lies.", Checking.Words(record, Doubts.OutsideKnownArea, context));
    }

    [Fact]
    public void AnAreaIsAskedOncePerTaxonAndSquare()
    {
        var areas = new SquareAreas();
        var checks = new RecordChecks(Checking.Context with { Areas = areas });
        for (var i = 0; i < 5; i++)
            checks.FindByPlace(Known("Westland", "TQ38", taxon: Ruber));

        Assert.Equal(1, areas.Asked);
    }

    [Fact]
    public void ASquareInTheSeaIsInDoubt()
    {
        var context = Checking.Context with { Sea = square => square.ToString() == "TV99" ? 14 : null };

        Assert.Equal(Doubts.AtSea, Checking.Find(Checking.Record("AB", square: "TV99"), context));
        Assert.Equal(Doubts.None, Checking.Find(Checking.Record("AB"), context));
        Assert.Equal("The whole square TV99 lies in the sea, 14 km from the nearest land.", Checking.Words(Checking.Record("AB", square: "TV99"), Doubts.AtSea, context));
    }

    [Fact]
    public void APlaceAheadOfTheFrontIsInDoubt()
    {
        var context = Checking.Context with { Front = (taxon, _, day) => taxon.Id == "E" ? 30 - (day.Year - 2005) * 10 : null };

        Assert.Equal(Doubts.AheadOfFront, Checking.Find(Checking.Record("E", day: "2006-06-03"), context));
        Assert.Equal(Doubts.None, Checking.Find(Checking.Record("E", day: "2006-06-03/2008-06-03"), context));
        Assert.Equal(Doubts.None, Checking.Find(Checking.Record("C", day: "2006-06-03"), context));
        Assert.Equal(
            "TQ38 lies 20 km ahead of the line that 99 in 100 arrivals of Species E were expected to stay behind on 3 Jun 2006.",
            Checking.Words(Checking.Record("E", day: "2006-06-03"), Doubts.AheadOfFront, context));
    }

    [Fact]
    public void TheWordsTellHowFarTwoPlacesLieApart()
    {
        var record = Assert.Single(Reading.OfRow("species,date,gridref,lat,lon,accuracy,datum", "Fictus ruber,1998,TQ38,52.0,0.0,50,WGS84").Records);

        Assert.Equal(Doubts.PlacesDisagree, record.Doubts);
        Assert.StartsWith("The coordinates 52, 0 lie ", Checking.Words(record, Doubts.PlacesDisagree), StringComparison.Ordinal);
    }

    private static Taxon Ruber { get; } = new("1", "Fictus ruber") { Notes = new Dictionary<string, string> { ["knownArea"] = "Westland" } };

    private static Record Known(string area, string square, Taxon? taxon = null) =>
        Checking.Record("AB", square: square) with { Taxon = taxon ?? new("1", "Fictus ruber") { Notes = new Dictionary<string, string> { ["knownArea"] = area } } };
}
