using System.Globalization;
using System.Text.Json;
using RangeMap.Grids;
using RangeMap.TestKit;

namespace RangeMap.Server.Tests;

/// <summary>A data folder with the outbreak in it, filled and asked through the command line.</summary>
internal sealed class OutbreakRun : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public string Data => _folder.File("data");

    public IReadOnlyList<OutbreakFarm> Farms { get; } = OutbreakFarm.ReadAll();

    public IEnumerable<OutbreakFarm> Cases => Farms.Where(farm => farm.IsCase);

    /// <summary>Imports the data set; gives the figures of the import.</summary>
    public static async Task<(OutbreakRun Run, JsonElement Figures)> ImportAsync()
    {
        var run = new OutbreakRun();
        await CommandAsync("taxa", OutbreakFarm.FileOf("taxa.csv"), "--data", run.Data);
        var told = await CommandAsync("import", OutbreakFarm.FileOf("records.csv"), "--dataset", "outbreak", "--data", run.Data, "--json");
        return (run, JsonDocument.Parse(told).RootElement);
    }

    /// <summary>Runs a command that must succeed; gives what it wrote.</summary>
    public static async Task<string> CommandAsync(params string[] arguments)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        var code = await CommandLine.RunAsync(arguments, new(output, error, TextReader.Null, TimeProvider.System), TestContext.Current.CancellationToken);
        Assert.True(code == 0, $"{string.Join(' ', arguments)} ended with {code}: {error}");
        return output.ToString();
    }

    /// <summary>Rows of the presence map as CSV: the cell of each square, its records and its visits.</summary>
    public async Task<IReadOnlyList<((int East, int North) Cell, int Records, int Visits)>> PresenceAsync(int sideKm)
    {
        var csv = await CommandAsync("presence", "fmd", "--grid", $"{sideKm}km", "--data", Data);
        return [.. csv.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(row => row.Split(',')).Select(cells =>
            (CellOf(GridReference.Parse(cells[0])), int.Parse(cells[4], CultureInfo.InvariantCulture), int.Parse(cells[5], CultureInfo.InvariantCulture)))];
    }

    /// <summary>Measures the spread of the first cases by 1 km square and time in months of 30.4375 days.</summary>
    public async Task<JsonElement> SpreadAsync()
    {
        var rows = Cases.GroupBy(farm => farm.Cell(1)).Select(square => string.Create(
            CultureInfo.InvariantCulture, $"{square.Min(farm => farm.Day) / 30.4375},{square.Key.East * 1000 + 500},{square.Key.North * 1000 + 500}\n"));
        var table = _folder.Write("first-cases.csv", "year,x,y\n" + string.Concat(rows));
        var told = await CommandAsync("spread", "--table", table, "--units", "m", "--time-unit", "month", "--grid", "1km", "--json");
        return JsonDocument.Parse(told).RootElement;
    }

    public void Dispose() => _folder.Dispose();

    /// <summary>The cell of a square of the British National Grid.</summary>
    public static (int East, int North) CellOf(Square square) => (square.Easting / square.SideMetres, square.Northing / square.SideMetres);
}
