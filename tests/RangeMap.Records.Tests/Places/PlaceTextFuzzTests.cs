using RangeMap.Grids;

namespace RangeMap.Records.Tests;

/// <summary>Any cells at all give a place or a fault with its reason, and never an exception.</summary>
public sealed class PlaceTextFuzzTests
{
    private const string Alphabet = "TQSNHJIOWAVEtqmkURDP0123456789  .-,/:;+°'\"ＴＱ\u00A0\u2212é#\u0000\uD800";

    private static readonly string[] References = ["", "TQ 308 801", "SO45K", "N45SE", "WV6548", "ITM 715830 734697", "30UXC9912", "10kmE342N321", "530800 180100", "54.1, -2.3"];
    private static readonly string[] Degrees = ["", "54.1", "-2.3", "52.658007833", "1.716073973", "91", "181", "1e3", "54°", "NaN", "-0"];
    private static readonly string[] Uncertainties = ["", "50", "1e5", "0", "-1", "10 m", "NaN", "1e400"];
    private static readonly string[] Datums = ["", "WGS84", "ED50", "OSGB36", "TM75", "Amersfoort", "EPSG:4326", "?"];

    private static readonly string[] Countries = ["", "", "GB", "Ireland", "IM", "Jersey", "NL", "Utopia"];
    private static readonly string[] Systems = ["", "", "", "GB", "Irish Grid", "ITM", "CI-WGS84", "EPSG:28992", "UTM", "EU"];

    [Fact]
    public void AnyCellsGiveAPlaceOrAFault() => Run(20_250_107, 200_000);

    /// <summary>The long run; its figures are in docs/methods/grids.md.</summary>
    [Fact(Explicit = true)]
    public void TenMillionRowsOfCellsGiveAPlaceOrAFault() => Run(20_250_108, 10_000_000);

    private static void Run(int seed, int rows)
    {
        var random = new Random(seed);
        var places = 0;
        for (var k = 0; k < rows; k++)
        {
            var cells = new PlaceText
            {
                GridReference = Cell(random, References),
                Latitude = Cell(random, Degrees),
                Longitude = Cell(random, Degrees),
                Uncertainty = Cell(random, Uncertainties),
                Datum = Cell(random, Datums),
                Country = Cell(random, Countries),
                System = k % 2 == 0 ? "" : Cell(random, Systems),
            };
            var options = new GridReferenceOptions(k % 3 == 0, k % 5 == 0 ? GridId.British : null, k % 7 == 0 ? "GB" : null);
            var read = cells.TryRead(options, out var place, out var fault);
            Assert.Equal(read, fault is null);
            Assert.True(!read || NationalGrid.Get(place.Square.Grid).Contains(new(place.Square.Easting, place.Square.Northing)));
            places += read ? 1 : 0;
        }

        Assert.InRange(places, rows / 100, rows);
    }

    /// <summary>One of the texts, often with some characters changed.</summary>
    private static string Cell(Random random, string[] texts)
    {
        var text = texts[random.Next(texts.Length)].ToCharArray();
        for (var k = text.Length == 0 ? 0 : random.Next(4) - 1; k > 0; k--)
            text[random.Next(text.Length)] = random.Next(20) == 0 ? (char)random.Next(0x10000) : Alphabet[random.Next(Alphabet.Length)];
        return new(text);
    }
}
