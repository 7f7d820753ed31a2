namespace RangeMap.Maps.Tests;

/// <summary>The kept styles are also read by the viewer's tests, which ask the validator of the MapLibre style specification.</summary>
public class MapStyleTests
{
    private const string Tiles = "https://maps.example.org/api/v1/taxa/inventa/tiles.json?grid=10km";

    [Theory]
    [InlineData("presence-light", false)]
    [InlineData("presence-dark", true)]
    public async Task AStyleOfPeriodsIsAsKept(string name, bool dark) => await CompareAsync(name, Legend.OfPeriods(PropertyNames.Latest, Drawing.TwoPeriods), dark);

    [Fact]
    public async Task AStyleOfYearsIsAsKept() => await CompareAsync("arrivals", Legend.OfYears(PropertyNames.First, 1987, 2024), dark: false);

    [Fact]
    public async Task AStyleOfASingleClassOrNoneIsAsKept()
    {
        await CompareAsync("one-class", Legend.OfYears(PropertyNames.First, 2001, 2001), dark: false);
        await CompareAsync("no-class", new(PropertyNames.First, []), dark: false);
    }

    private static async Task CompareAsync(string name, Legend legend, bool dark) =>
        Golden.Compare($"{name}.json", await Written.TextAsync(stream => MapStyle.WriteAsync(stream, "Inventa nova", Tiles, legend, dark)));
}
