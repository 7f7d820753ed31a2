using System.Globalization;
using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Server.Tests;

/// <summary>
/// A rule of thumb of naturalists (common practice, no publication): a bee first found in southern England in 2001 and in southern Scotland in 2013 moved about 35 to 45 km a
/// year. The squares are invented. Grid references go in, kilometres a year come out: a slip of a letter, a unit or a plane shows at once.
/// </summary>
public sealed class ArrivingBeeTests
{
    private const int InTheSouth = 2001;
    private const int InTheNorth = 2013;
    private const double LeastKmPerYear = 35;
    private const double MostKmPerYear = 45;

    private static readonly string[] South = ["SU21", "SU22", "SU31", "SU20"];
    private static readonly string[] North = ["NX98", "NY38", "NT42", "NT61"];

    private static readonly (int Year, string Square)[] OnTheWay =
    [
        (2003, "SU49"), (2004, "SP53"), (2005, "SP57"), (2006, "SK50"), (2006, "SK42"), (2007, "SK37"), (2008, "SE20"), (2008, "SE10"), (2009, "SE03"), (2010, "SD96"),
        (2010, "SE26"), (2011, "NY90"), (2012, "NY55"),
    ];

    [Fact]
    public void FromSouthernEnglandToSouthernScotlandInTwelveYearsIsAboutFortyKilometresAYear()
    {
        foreach (var (south, north) in South.SelectMany(south => North.Select(north => (south, north))))
        {
            var kmPerYear = Km(Centre(south), Centre(north)) / (InTheNorth - InTheSouth);
            Assert.True(kmPerYear is >= LeastKmPerYear and <= MostKmPerYear, string.Create(CultureInfo.InvariantCulture, $"{south} to {north}: {kmPerYear:0.0} km a year"));
        }
    }

    // The Irish letters lie on another plane: what is measured across the sea must not jump with it.
    [Fact]
    public void TheDistanceToASquareOfAnotherGridIsThatOverTheGround()
    {
        var (south, ulster) = (Centre("SU21"), Centre("J37"));
        var overTheGround = GreatCircle.Km(LatLonOf("SU21"), LatLonOf("J37"));

        // Projection and sphere differ by less than 1 %.
        Assert.InRange(Km(south, ulster) / overTheGround, 0.99, 1.01);
    }

    [Fact]
    public void TheSpeedMeasuredFromAllSquaresOnTheWayIsTheSame()
    {
        var firsts = South.Select(square => (Year: InTheSouth, Square: square)).Concat(OnTheWay).Concat(North.Select(square => (Year: InTheNorth, Square: square)));

        var report = Spread.Measure(firsts.Select(first => PointOf(first.Square, first.Year)));

        Assert.InRange(report.By(SpreadMethods.AllPoints).KmPerYear!.Value, LeastKmPerYear, MostKmPerYear);
        Assert.InRange(report.By(SpreadMethods.Maximum).KmPerYear!.Value, LeastKmPerYear, MostKmPerYear);
    }

    private static ArrivalPoint PointOf(string square, int year)
    {
        var centre = Centre(square);
        return new(centre.Easting / 1000, centre.Northing / 1000, year);
    }

    private static EastNorth Centre(string square) => Arrival.CommonCentre(GridReference.Parse(square));

    private static LatLon LatLonOf(string text)
    {
        var square = GridReference.Parse(text);
        return NationalGrid.Get(square.Grid).ToLatLon(square.Centre);
    }

    private static double Km(EastNorth a, EastNorth b) => PlanePoint.Km(new(a.Easting / 1000, a.Northing / 1000), new(b.Easting / 1000, b.Northing / 1000));
}
