using RangeMap.Grids;

namespace RangeMap.Maps.Tests.Printed;

/// <summary>Invented maps over an invented land: two parts that share a border, with a lake in one.</summary>
internal static class SomePrint
{
    public static readonly BaseMap Land = new(
        [
            new([Ring((-5, 50), (-1, 50), (-1, 55), (-5, 55)), Ring((-3, 52), (-3, 53), (-2, 53), (-2, 52.2), (-2.2, 52), (-2.6, 51.9), (-2.9, 51.9))]),
            new([Ring((-5, 55), (-1, 55), (-1, 58), (-5, 58))]),
        ],
        [new([Ring((1, 49), (3, 49), (3, 51), (1, 51))])],
        [[new(52, -5), new(52.5, -4)]],
        [new(GridId.British, SquareSize.Km100, 400_000, 500_000), new(GridId.British, SquareSize.Km100, 300_000, 500_000)]);

    /// <summary>Squares of 10 km from Cornwall to Shetland, in Ireland and in the Channel Islands, of the classes in turn.</summary>
    public static PrintedMap Map(int classes = 3, PrintInk ink = PrintInk.Colour, SquareSize side = SquareSize.Km10, MapArea? area = null)
    {
        var legend = Legend.OfYears(PropertyNames.Year, 1990, 1990 + classes - 1);
        var marks = ClassMarks.Of(legend, ink);
        string[] names = ["SW64", "NZ26", "NZ27", "NZ36", "HU44", "J37", "WV64", "NH64", "TQ38"];
        var squares = names.Select(name => GridReference.TryParse(name, default, out var square, out var why) ? square : throw new InvalidOperationException(why)).ToList();
        return new()
        {
            Name = [new("Inventa nova", true), new("agg.", false)],
            VernacularName = "invented <bee> & fly",
            Subject = "Squares of 10 km by year",
            Area = area ?? MapArea.Islands,
            Side = side,
            LegendTitle = "Number of squares",
            Classes = [.. legend.Classes.Zip(marks, (part, mark) => new PrintedClass(part.Label, mark))],
            Squares = [.. squares.Select((square, i) => new PrintedSquare(square, i % classes))],
            Fronts = [new(1991, [[new(300_000, 300_000), new(500_000, 400_000), new(600_000, 300_000)]])],
            Source = ["9 records in 9 squares.", "An invented scheme, edition 7 of 3 May 2026."],
            Publisher = "An invented scheme",
            EditionMadeAt = new(2026, 5, 3, 12, 0, 0, TimeSpan.Zero),
        };
    }

    public static byte[] Print(PrintFormat format, PrintSize size = PrintSize.Page, PrintInk ink = PrintInk.Colour, PrintedMap? map = null) =>
        MapPrinter.Print(map ?? Map(ink: ink), Land, format, size, ink);

    private static LatLon[] Ring(params (double Longitude, double Latitude)[] points) => [.. points.Append(points[0]).Select(point => new LatLon(point.Latitude, point.Longitude))];
}
