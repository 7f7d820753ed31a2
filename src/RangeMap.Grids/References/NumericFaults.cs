using System.Globalization;

namespace RangeMap.Grids;

/// <summary>Every reason why eastings and northings, or a reference with a zone, name no square, as a sentence that says how to mend it.</summary>
internal static class NumericFaults
{
    public const string NoPair = "These are no easting and northing: give two numbers in metres, such as 530800 180100.";
    public const string AxisLetters = "The letters E and N must stand with one number each, or with neither.";
    public const string Negative = "An easting or northing is negative: no grid here has negative ones.";
    public const string Degrees = "This is a latitude and longitude, not a grid reference: put the two numbers in their own columns.";
    public const string NoSystem = "Eastings and northings do not say which grid they are on: a grid reference begins with the letters of its 100 km square, as in TQ3080; put them before the figures, or state the grid.";
    public const string ZoneMissing = "UTM eastings and northings need their zone: write 30U 565145 5448517, say.";
    public const string ZoneOnly = "This names a zone only: give the two letters of the 100 km square as well, as in 30UXC9912.";
    public const string AxisOrder = "Easting and northing of the European grid are written in either order: mark them with E and N, or give the cell code (10kmE342N321).";

    public static string NoZone(ReadOnlySpan<char> zone) => Text($"There is no zone {zone.ToString()}: zones are numbered 1 to 60.");

    public static string NoBand(char letter) => letter is 'A' or 'B' or 'Y' or 'Z'
        ? Text($"{letter} is a polar area of the military grid, which is not read here: give latitude and longitude.")
        : Text($"The letter {letter} is no band of the military grid: C to X without I and O are.");

    public static string NoSuchBandHere(int zone) => Text($"There is no {zone}X: zones 31, 33, 35 and 37 are widened there.");

    public static string MgrsLetters(int letters) => Text($"{letters} letters stand between the zone and the figures: give the two of the 100 km square, as in 30UXC9912.");

    public static string NoMgrsSquare(int zone, char band, char column, char row) => Text($"{column}{row} is no 100 km square of {zone}{band}: check zone, band and letters.");

    public static string HemisphereOrBand(int zone) =>
        Text($"{zone}S could be the southern hemisphere or band S in the north: write EPSG:327{zone:00} for the south or EPSG:326{zone:00} for the north before the numbers.");

    public static string OutsideBand(double northing, char band) => Text($"The northing {northing} m does not lie in band {band}: check the two.");

    public static string UnknownCode(ReadOnlySpan<char> code) => Text($"EPSG:{code.ToString()} is no grid that is known here: see the list of grids.");

    public static string UnknownCountry(string country) => Text($"The country {country} does not tell the grid of eastings and northings: state the grid.");

    public static string Ambiguous(IEnumerable<INationalGrid> grids) =>
        Text($"Eastings and northings alone do not say which grid they are on, here {string.Join(" or ", grids.Select(grid => grid.Name))}: a grid reference begins with the letters of its 100 km square; or state the grid or the country.");

    public static string OutsideCountry(string country) => Text($"On no grid of {country} do these numbers lie in that country: check them, or the country.");

    public static string TooFewFigures(INationalGrid grid) =>
        Text($"Eastings and northings of the {grid.Name} are read in metres, and these have fewer than 4 figures: give whole metres, or letters and figures.");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
