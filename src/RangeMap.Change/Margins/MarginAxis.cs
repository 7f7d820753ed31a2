namespace RangeMap.Change;

/// <summary>A direction in which a range has a margin.</summary>
/// <param name="Method">The method that measures it.</param>
/// <param name="East">Eastward part of the direction, of length 1.</param>
/// <param name="North">Northward part.</param>
internal readonly record struct MarginAxis(string Method, double East, double North)
{
    /// <summary>North, south, east and west.</summary>
    public static MarginAxis[] Four { get; } =
    [
        new(ChangeMethods.MarginNorth, 0, 1), new(ChangeMethods.MarginSouth, 0, -1), new(ChangeMethods.MarginEast, 1, 0), new(ChangeMethods.MarginWest, -1, 0),
    ];

    /// <summary>1 where outwards is north or east, -1 where it is south or west: turns kilometres outwards into a northing or an easting.</summary>
    public int Sign => East + North < 0 ? -1 : 1;

    /// <summary>The direction of the gamma margin.</summary>
    /// <param name="bearing">Degrees clockwise from grid north.</param>
    public static MarginAxis At(double bearing) => new(ChangeMethods.MarginGamma, Math.Sin(bearing * Math.PI / 180), Math.Cos(bearing * Math.PI / 180));

    /// <summary>Kilometres outwards.</summary>
    public double Along(double x, double y) => x * East + y * North;

    /// <summary>Kilometres to the side of the direction: to the right of it where it is north or east, so that opposite margins have the same strips.</summary>
    public double Across(double x, double y) => Sign * (x * North - y * East);
}
