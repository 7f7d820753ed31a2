using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Records.Tests;

public sealed class PlaceTests
{
    private const string Header = "species,date,gridref,lat,lon,accuracy,datum";

    // The worked example of Ordnance Survey, "A guide to coordinate systems in Great Britain", for OSTN15: Caister water tower, E 651409.804 N 313177.450.
    private const string Caister = "52.658007833,1.716073973";

    [Fact]
    public void CoordinatesGiveTheSmallestSquareThatHoldsTheirCircle()
    {
        Assert.Equal("TG5113", Row($",{Caister},50,WGS84").Square.ToString());
        Assert.Equal("TG514131", Row($",{Caister},2.9,WGS84").Square.ToString());
        Assert.Equal("TG51SW", Row($",{Caister},1000,WGS84").Square.ToString());
    }

    [Fact]
    public void AStatedUncertaintyAndDatumLeaveNoDoubt()
    {
        var record = Row($",{Caister},50,EPSG:4326");

        Assert.Equal(Doubts.None, record.Doubts);
        Assert.Equal(50, record.UncertaintyMetres);
        Assert.Equal(new LatLon(52.658007833, 1.716073973), record.Point);
    }

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    public void WithoutAnUncertaintyItIsAssumedFromTheDecimals(string uncertainty)
    {
        var record = Row($",52.65,1.71,{uncertainty},WGS84");

        Assert.Equal(Doubts.UncertaintyAssumed, record.Doubts);
        Assert.InRange(record.UncertaintyMetres!.Value, 500, 1200);
        Assert.True(record.Square.SideMetres >= 2 * record.UncertaintyMetres);
    }

    [Fact]
    public void AMissingOrUnknownDatumIsInDoubt()
    {
        Assert.Equal(Doubts.DatumAssumed, Row($",{Caister},50,").Doubts);
        var unknown = Row($",{Caister},50,Clarke 1858");
        Assert.Equal(Doubts.DatumAssumed, unknown.Doubts);
        Assert.Equal(300, unknown.UncertaintyMetres);
    }

    [Theory]
    // Ordnance Survey, "A guide to coordinate systems in Great Britain": Caister water tower, 52 39 27.2531 N 1 43 4.5177 E on OSGB36, the same point of the National Grid.
    [InlineData("OSGB36", "52.65757031,1.71792158", 2.9, 2.9)]
    [InlineData("EPSG:4277", "52.65757031,1.71792158", 2.9, 2.9)]
    public void OtherDatumsAreShiftedAndLeaveNoDoubt(string datum, string place, double uncertainty, double after)
    {
        var record = Row($",{place},{uncertainty.ToString(CultureInfo.InvariantCulture)},{datum}");
        Assert.Equal((Doubts.None, after), (record.Doubts, record.UncertaintyMetres));
        var point = NationalGrid.Get(GridId.British).FromLatLon(record.Point!.Value);
        Assert.Equal(651409.903, point.Easting, 0.02);
        Assert.Equal(313177.270, point.Northing, 0.02);
    }

    [Fact]
    public void TheErrorOfAShiftWidensTheCircle()
    {
        // ED50 by EPSG:1133 is good to 10 m; it moves a place in the Channel by about 80 m west and 110 m south.
        var record = Row(",49.2,-2.1,50,ED50");
        Assert.Equal((Doubts.None, 60.0), (record.Doubts, record.UncertaintyMetres));
        Assert.InRange(record.Point!.Value.Latitude, 49.1985, 49.1995);
        Assert.InRange(record.Point!.Value.Longitude, -2.1020, -2.1005);
    }

    [Theory]
    [InlineData("40.7,-74.0", "lat")]
    [InlineData("-33.9,151.2", "lat")]
    public void NoShiftMovesAFarPlaceIntoAGrid(string place, string field) =>
        Assert.Equal(field, Assert.Single(Reading.OfRow(Header, $"Fictus ruber,1998,,{place},50,OSGB36").Refusals).Field);

    [Theory]
    [InlineData("530800 180100,GB,", "TQ3080080100")]
    [InlineData("530800 180100,United Kingdom,", "TQ3080080100")]
    [InlineData("530800 180100,,EPSG:27700", "TQ3080080100")]
    [InlineData("315904 234671,Ireland,Irish Grid", "O1590434671")]
    [InlineData("315904 234671,,IE", "O1590434671")]
    [InlineData("715830 734697,IE,", "ITM715830734697")]
    [InlineData("TQ3080,Ireland,", "TQ3080")]
    [InlineData("WV6548,,CI-WGS84", "WV6548")]
    public void CountryOrGridSystemTellsTheGridOfBareFigures(string cells, string square) =>
        Assert.Equal(square, Assert.Single(Reading.OfRow("species,date,gridref,country,gridSystem", $"Fictus ruber,1998,{cells}").Records).Square.ToString());

    [Theory]
    [InlineData("530800 180100,,", "gridref", "which grid")]
    [InlineData("530800 180100,Utopia,", "gridref", "Utopia")]
    [InlineData("TQ3080,,IE", "gridref", "Irish")]
    [InlineData("TQ3080,,moon", "gridSystem", "no grid that is known")]
    public void WhatTheGridCannotBeIsRefused(string cells, string field, string reason)
    {
        var refusal = Assert.Single(Reading.OfRow("species,date,gridref,country,gridSystem", $"Fictus ruber,1998,{cells}").Refusals);
        Assert.Equal(field, refusal.Field);
        Assert.Contains(reason, refusal.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void AGridSystemBesideCoordinatesAloneIsOfNoAccount() =>
        Assert.Single(Reading.OfRow("species,date,lat,lon,gridSystem", $"Fictus ruber,1998,{Caister},WGS84").Records);

    [Fact]
    public void ExchangedCoordinatesAreReadTheOtherWayInDoubt()
    {
        var record = Row(",1.716073973,52.658007833,50,WGS84");

        Assert.Equal("TG5113", record.Square.ToString());
        Assert.Equal(Doubts.CoordinatesSwapped, record.Doubts);
    }

    [Fact]
    public void AGridReferenceAndCoordinatesThatAgreeKeepTheGridReferencesSquare()
    {
        var record = Row($"TG5113,{Caister},50,WGS84");

        Assert.Equal(("TG5113", Doubts.None), (record.Square.ToString(), record.Doubts));
    }

    [Theory]
    [InlineData("TG5114", 250, true)]
    [InlineData("TG5114", 900, false)]
    [InlineData("TG61", 50, true)]
    public void DisagreementIsMeasuredAgainstTheUncertainty(string reference, int metres, bool disagrees)
    {
        var record = Row($"{reference},{Caister},{metres},WGS84");

        Assert.Equal(reference, record.Square.ToString());
        Assert.Equal(disagrees ? Doubts.PlacesDisagree : Doubts.None, record.Doubts);
    }

    [Fact]
    public void ChannelIslandsReferencesAreReadOnTheStatedDatum()
    {
        Assert.Equal(GridId.ChannelIslands, Row("WV6548,,,,").Square.Grid);
        var stated = Reading.OfRow(Header, "Fictus ruber,1998,WV6548,,,,", Reading.Options with { ChannelIslandsWgs84 = true });
        Assert.Equal(GridId.ChannelIslandsWgs84, Assert.Single(stated.Records).Square.Grid);
    }

    [Theory]
    [InlineData(",0,0,,", "lat", "0, 0 lies")]
    [InlineData(",0.0,0.00,,", "lat", "0, 0 lies")]
    [InlineData(",52.6,,,", "lon", "without the longitude")]
    [InlineData(",,1.7,,", "lat", "without the latitude")]
    [InlineData("TG5113,52.6,,,", "lon", "without the longitude")]
    [InlineData(",95,1.7,,", "lat", "between -90 and 90")]
    [InlineData(",52.6,181,,", "lon", "between -180 and 180")]
    [InlineData(",north,1.7,,", "lat", "decimal degrees")]
    [InlineData(",NaN,1.7,,", "lat", "decimal degrees")]
    [InlineData(",\"52,6\",1.7,,", "lat", "with a point")]
    [InlineData(",40.7,-74.0,,", "lat", "outside every national grid")]
    [InlineData(",,,,", "gridref", "no place")]
    [InlineData(",52.6,1.7,-5,", "accuracy", "metres above 0")]
    [InlineData(",52.6,1.7,about,", "accuracy", "metres above 0")]
    [InlineData(",52.65,1.71,60000,WGS84", "accuracy", "no square")]
    public void WhatIsNoPlaceIsRefused(string cells, string field, string reason)
    {
        var refusal = Assert.Single(Reading.OfRow(Header, $"Fictus ruber,1998,{cells}").Refusals);

        Assert.Equal(field, refusal.Field);
        Assert.Contains(reason, refusal.Reason, StringComparison.Ordinal);
    }

    private static Record Row(string cells)
    {
        var reading = Reading.OfRow(Header, $"Fictus ruber,1998,{cells}");
        Assert.Empty(reading.Refusals.Select(r => r.Reason));
        return reading.Records[0];
    }
}
