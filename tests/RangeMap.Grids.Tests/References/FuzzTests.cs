using System.Globalization;

namespace RangeMap.Grids.Tests;

/// <summary>Any text at all gives a square, a place or a reason, and never an exception.</summary>
public sealed class FuzzTests(ITestOutputHelper output)
{
    private const int LongRun = 10_000_000, ShortRun = 200_000;

    private static readonly GridReferenceOptions[] Options =
    [
        default, new(ChannelIslandsWgs84: true), new(System: GridId.British), new(System: GridId.IrishTransverseMercator), new(System: GridId.Dutch), new(System: GridId.UtmNorth),
        new(System: GridId.European), new(Country: "GB"), new(Country: "ie"), new(Country: "JE"), new(Country: "nowhere"),
    ];

    [Fact]
    public void AnyTextGivesASquareOrAPlaceOrAReason() => Run(20_250_105, ShortRun);

    /// <summary>The long run; its figures are in docs/methods/grids.md. Run it with the explicit tests: <c>-explicit only</c>.</summary>
    [Fact(Explicit = true)]
    public void TenMillionTextsGiveASquareOrAPlaceOrAReason() => Run(20_250_106, LongRun);

    private void Run(int seed, int texts)
    {
        var source = new FuzzText(seed);
        int squares = 0, places = 0;
        for (var k = 0; k < texts; k++)
        {
            var text = source.Next();
            squares += Reads(text, Options[k % Options.Length]) ? 1 : 0;
            var isPlace = CoordinateText.TryParse(text, out _, out var why);
            Assert.True(isPlace ? why is null : why!.EndsWith('.'), text);
            places += isPlace ? 1 : 0;
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{texts} texts: {squares} squares, {places} latitudes and longitudes"));
        Assert.InRange(squares, texts / 50, texts);
        Assert.InRange(places, texts / 200, texts);
    }

    /// <summary>Reads a reference; a square that was read must lie on its grid and be read again from its own name.</summary>
    private static bool Reads(string text, GridReferenceOptions options)
    {
        var read = GridReference.TryParse(text, options, out var square, out var why);
        Assert.Equal(read, why is null);
        if (!read)
        {
            Assert.True(why!.EndsWith('.') && square == default, text);
            return false;
        }

        Assert.True(NationalGrid.Get(square.Grid).Contains(new(square.Easting, square.Northing)), text);
        Assert.Equal(square, GridReference.Parse(square.ToString(), new(square.Grid == GridId.ChannelIslandsWgs84)));
        return true;
    }
}
