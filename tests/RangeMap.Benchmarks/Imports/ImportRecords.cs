using RangeMap.Server;

namespace RangeMap.Benchmarks;

/// <summary>
/// A whole import into a fresh data folder: from the file to maps that can be asked for. The peer is the sqlite3 shell,
/// which loads the same file as text into one table and makes one index; it is left out where it is not installed.
/// </summary>
internal static class ImportRecords
{
    private const string Shell = "/usr/bin/sqlite3";

    /// <summary>From here on one run is enough.</summary>
    private const long Many = 5_000_000;

    public static async Task RunAsync(long rows)
    {
        var files = SimulatedFolder.Of(rows);
        var target = files.File("import");
        ImportAnswer? answer = null;
        var ours = await Timing.OfAsync("import", async () => answer = await files.ImportAsync(target), () => Clear(target), rows < Many ? Timing.Runs : 1);
        ours.Print(rows, "rows");
        Console.WriteLine($"  {answer!.Figures.Accepted} accepted, {answer.Figures.Refused} refused; memory at most {PeakMb()} MB");
        if (!File.Exists(Shell))
            return;

        var peerFile = files.File("peer.sqlite");
        string[] arguments = [peerFile, ".mode csv", $".import {files.Records} record", "CREATE INDEX by_name ON record (scientificName, eventDate)"];
        var peer = Timing.OfProgram("sqlite3 .import and one index", Shell, arguments, () => File.Delete(peerFile));
        peer.Print(rows, "rows");
        ours.PrintRatio(peer);
        Clear(target);
        File.Delete(peerFile);
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
