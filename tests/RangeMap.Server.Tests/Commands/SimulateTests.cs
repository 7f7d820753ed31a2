namespace RangeMap.Server.Tests.Commands;

public sealed class SimulateTests
{
    [Fact]
    public async Task TheSameSeedGivesTheSameBytesAndAnotherSeedOthers()
    {
        using var data = new DataDirectory();
        await SimulateAsync(data, "one", 7);
        await SimulateAsync(data, "two", 7);
        await SimulateAsync(data, "three", 8);
        foreach (var name in (string[])["taxa.csv", "records.csv", "truth.csv"])
            Assert.Equal(await ReadAsync(data, "one", name), await ReadAsync(data, "two", name));
        Assert.NotEqual(await ReadAsync(data, "one", "records.csv"), await ReadAsync(data, "three", "records.csv"));
    }

    [Fact]
    public async Task RecordsLieWhereTheTruthSaysTheSpeciesHadCome()
    {
        using var data = new DataDirectory();
        await SimulateAsync(data, "world", 3);
        var reached = (await File.ReadAllLinesAsync(Path.Combine(data.Beside("world"), "truth.csv"))).Skip(1).Select(line => line.Split(','))
            .Where(cells => cells[0] == "cindrava-adventa")
            .ToDictionary(cells => cells[2], cells => double.Parse(cells[3], System.Globalization.CultureInfo.InvariantCulture));
        await data.RunAsync("taxa", Path.Combine(data.Beside("world"), "taxa.csv"));
        await data.ImportAsync(Path.Combine(data.Beside("world"), "records.csv"));
        var run = await data.RunAsync("presence", "cindrava-adventa", "--quality", "confirmed");
        var rows = run.Out.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(row => row.Split(',')).ToList();
        Assert.NotEmpty(rows);
        // Confirmed records carry no invented misnaming; a year's date is the whole year, so a year is allowed for.
        var early = rows.Where(row => !reached.TryGetValue(row[0], out var year) || int.Parse(row[6], System.Globalization.CultureInfo.InvariantCulture) < Math.Floor(year) - 1);
        Assert.Empty(early.Select(row => row[0]));
    }

    [Theory]
    [InlineData("--rows", "-1")]
    [InlineData("--speed", "0")]
    [InlineData("--speed", "NaN")]
    public async Task ImpossibleWorldsAreRefused(string option, string value)
    {
        using var data = new DataDirectory();
        Assert.NotEqual(0, (await CommandRun.OfAsync("simulate", "-o", data.Beside("w"), "--rows", "10", option, value)).Exit);
    }

    private static async Task SimulateAsync(DataDirectory data, string folder, int seed) => Assert.Equal(
        0, (await CommandRun.OfAsync("simulate", "-o", data.Beside(folder), "--rows", "4000", "--seed", seed.ToString(System.Globalization.CultureInfo.InvariantCulture))).Exit);

    private static Task<byte[]> ReadAsync(DataDirectory data, string folder, string name) => File.ReadAllBytesAsync(Path.Combine(data.Beside(folder), name));
}
