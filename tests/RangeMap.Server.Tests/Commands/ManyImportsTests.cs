using CsCheck;

namespace RangeMap.Server.Tests.Commands;

/// <summary>However records reach the data folder, the maps are those of what was said last.</summary>
public sealed class ManyImportsTests
{
    private const string Header = "occurrenceID,scientificName,eventDate,gridReference,recordedBy,identificationVerificationStatus,occurrenceStatus\n";

    private static readonly Gen<string> Statement = Gen.Select(
        OneOf("Inventa prima", "Inventa secunda", "Inventa gemella agg.", "Inventa secreta", "Inventa trina"),
        OneOf("2005-06-01", "2005-06-02", "2005-06", "1998/2003", "2012"),
        OneOf("NZ2563", "NZ26L", "NZ256634", "NZ26", "J3374"),
        OneOf("A. Invented", "B. Invented", ""),
        OneOf("", "confirmed", "rejected", "doubtful"),
        OneOf("", "present", "absent"),
        (name, date, place, recorder, status, present) => $"{name},{date},{place},{recorder},{status},{present}");

    /// <summary>Files of rows, each an occurrence and what is said of it; an occurrence stands once in a file.</summary>
    private static readonly Gen<(int Occurrence, string Says)[][]> Files =
        Gen.Select(Gen.Int[1, 6], Statement).Array[1, 8].Select(rows => rows.DistinctBy(row => row.Item1).ToArray()).Array[1, 5];

    [Fact]
    public Task ChangedRecordsLeaveNothingBehind() => Files.SampleAsync(
        async files =>
        {
            using var step = await DataDirectory.WithTaxaAsync();
            foreach (var file in files)
                await step.ImportTableAsync(Table(file));
            using var atOnce = await DataDirectory.WithTaxaAsync();
            var last = files.SelectMany(file => file).GroupBy(row => row.Occurrence).Select(rows => rows.Last());
            await atOnce.ImportTableAsync(Table(last));
            Assert.Equal(await atOnce.AllMapsAsync(), await step.AllMapsAsync());
        },
        seed: "0000KOIr0ep4", iter: 20, threads: 1);

    [Fact]
    public async Task ManySmallImportsAreAsOneLargeOne()
    {
        // More imports than a taxon's cube has segments before they are merged.
        var rows = Enumerable.Range(1, 40).Select(i => (i, $"Inventa prima,20{i % 10:00}-06-01,NZ{20 + i % 9}63,A. Invented,,")).ToArray();
        using DataDirectory small = await DataDirectory.WithTaxaAsync(), large = await DataDirectory.WithTaxaAsync();
        foreach (var row in rows.Reverse())
            Assert.Equal(1, (await small.ImportTableAsync(Table([row]))).Int("accepted"));
        await large.ImportTableAsync(Table(rows));
        Assert.Equal(await large.AllMapsAsync(), await small.AllMapsAsync());
    }

    [Fact]
    public async Task ImportsAtTheSameTimeWaitForEachOtherAndLoseNothing()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var files = Enumerable.Range(0, 6).Select(file => data.Write(
            FormattableString.Invariant($"{file}.csv"), Table(Enumerable.Range(0, 50).Select(i => (file * 100 + i, "Inventa prima,2005-06-01,NZ2563,,,"))))).ToList();
        var runs = await Task.WhenAll(files.Select(file => Task.Run(() => data.ImportAsync(file, "--json"))));
        Assert.All(runs, run => Assert.Equal((0, 50), (run.Exit, run.Json.Int("accepted"))));
        Assert.Equal(300, (await data.CountsAsync("prima", "1km"))[("NZ2563", "../..")]);
    }

    private static Gen<string> OneOf(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    private static string Table(IEnumerable<(int Occurrence, string Says)> rows) =>
        Header + string.Concat(rows.Select(row => FormattableString.Invariant($"o{row.Occurrence},{row.Says}\n")));
}
