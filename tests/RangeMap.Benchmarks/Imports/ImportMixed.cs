using RangeMap.Server;

namespace RangeMap.Benchmarks;

/// <summary>
/// Mixed rows to maps that can be asked for, against the sqlite3 shell that loads the same file as text and makes one index;
/// then what maps do not wait for, the indexes by which records are looked up, and 10,000 rows more.
/// </summary>
internal static class ImportMixed
{
    private const string Shell = "/usr/bin/sqlite3";
    private const int Rounds = 3;

    public static async Task RunAsync(long rows)
    {
        var file = MixedFile.Of(rows);
        var data = Path.Combine(file.Folder, "data");
        // In turn with the peer: a machine shared with others is fast in one minute and slow in the next.
        Timing? ours = null, peer = null;
        for (var round = 0; round < Rounds; round++)
        {
            ImportAnswer? answer = null;
            var run = await Timing.OfAsync("import of mixed rows", async () => answer = await ImportAsync(data, file.Records, file.TaxonList), () => Clear(data), runs: 1);
            run.Print(rows, "rows");
            if (round == 0) // later rounds stand on what this one left in memory
                Console.WriteLine($"  compiling included; {answer!.Figures.Accepted} accepted, {answer.Figures.Refused} refused; memory at most {PeakMb()} MB");
            ours = ours?.And(run) ?? run;
            if (round == 0)
                await AddMoreAsync(file, data);
            if (!File.Exists(Shell))
                continue;
            var other = LoadWithShell(file);
            other.Print(rows, "rows");
            run.PrintRatio(other);
            peer = peer?.And(other) ?? other;
        }

        ours!.Print(rows, "rows");
        if (peer is not null)
            ours.PrintRatio(peer);
        Clear(data);
    }

    private static Timing LoadWithShell(MixedFile file)
    {
        var peerFile = Path.Combine(file.Folder, "peer.sqlite");
        string[] arguments = [peerFile, ".mode csv", $".import {file.Records} record", "CREATE INDEX by_name ON record (scientificName, eventDate)"];
        var timing = Timing.OfProgram("sqlite3 .import and one index", Shell, arguments, () => File.Delete(peerFile), runs: 1);
        File.Delete(peerFile);
        return timing;
    }

    private static async Task AddMoreAsync(MixedFile file, string data)
    {
        ImportAnswer? answer = null;
        var folder = DataFolder.Open(data);
        var indexes = await Timing.OfAsync("look-up indexes, and the log into the database", () => Task.Run(() => Store.ImportAftercare.Run(folder.Database)), runs: 1);
        indexes.Print();
        var addition = await Timing.OfAsync("10,000 rows more", async () => answer = await ImportFile.RunAsync(folder, new(file.Addition, "mixed"), TimeProvider.System), runs: 1);
        addition.Print(MixedFile.AddedRows, "rows");
        Console.WriteLine($"  {answer!.Figures.Accepted} accepted, {answer.Figures.Refused} refused");
    }

    private static async Task<ImportAnswer> ImportAsync(string data, string records, string taxa)
    {
        // As the command does.
        System.Runtime.GCSettings.LatencyMode = System.Runtime.GCLatencyMode.Batch;
        var folder = DataFolder.Open(data);
        LoadTaxonList.Run(folder, taxa, TimeProvider.System);
        return await ImportFile.RunAsync(folder, new(records, "mixed"), TimeProvider.System);
    }

    private static void Clear(string folder)
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }

    private static long PeakMb()
    {
        using var process = System.Diagnostics.Process.GetCurrentProcess();
        return process.PeakWorkingSet64 >> 20;
    }
}
