using System.Diagnostics;
using System.Text;

namespace RangeMap.Server.Tests.Commands;

/// <summary>Files that cannot be imported as a whole: each is refused in clear words, and the data stay as they were.</summary>
public sealed class BadFileTests
{
    private const string Header = "occurrenceID,scientificName,eventDate,gridReference\n";
    private const string Good = Header + "g1,Inventa prima,2005-06-01,NZ2563\n";

    public static TheoryData<string, string, string> BadTables => new()
    {
        { "empty", "", "empty" },
        { "header only", Header, "no rows" },
        { "no usable column", "one,two\n1,2\n", "No column was recognised for a taxon" },
        { "no place", "scientificName,eventDate\nInventa prima,2005\n", "nor for a place|a place" },
        { "a column twice", "date,date,species,grid\n1,2,3,4\n", "Two columns are called" },
        { "no word at all", "\0\0\0\0\0\0\0\0,\0\0\0\n\0", "not a text file|empty|recognised" },
        { "ambiguous dates", Header + "a,Inventa prima,3/6/1998,NZ2563\nb,Inventa prima,4/6/1998,NZ2563\n", "--date-order" },
        { "contradicting dates", Header + "a,Inventa prima,13/6/1998,NZ2563\nb,Inventa prima,6/13/1998,NZ2563\n", "contradict" },
    };

    [Theory]
    [MemberData(nameof(BadTables))]
    public async Task ABadTableIsRefusedAsAWhole(string what, string table, string anyOfTheseWords)
    {
        using var data = await WithOneRecordAsync();
        var maps = await data.AllMapsAsync();
        var run = await data.ImportAsync(data.Write("bad.csv", table));
        Assert.True(run.Exit == 1, what);
        Assert.Contains(anyOfTheseWords.Split('|'), words => run.Error.Contains(words, StringComparison.OrdinalIgnoreCase));
        Assert.Equal(maps, await data.AllMapsAsync());
        var error = (await data.ImportAsync(data.Beside("bad.csv"), "--json")).Json["error"]!;
        Assert.Equal(["what", "where", "mend"], error.Names());
        Assert.All(error.AsObject(), part => Assert.NotEmpty((string)part.Value!));
    }

    [Fact]
    public async Task AnAmbiguousDateFarDownStopsTheWholeImport()
    {
        using var data = await WithOneRecordAsync();
        var maps = await data.AllMapsAsync();
        var table = new StringBuilder(Header);
        for (var i = 0; i < 500; i++)
            table.Append(System.Globalization.CultureInfo.InvariantCulture, $"d{i},Inventa prima,2001-06-01,NZ2563\n");
        table.Append("late,Inventa prima,3/6/1998,NZ2563\n");
        var file = data.Write("late.csv", table.ToString());
        (await data.ImportAsync(file)).Failed(1, "3/6/1998", "line 502", "--date-order dmy");
        Assert.Equal(maps, await data.AllMapsAsync());
        Assert.Equal(501, (await data.ImportAsync(file, "--date-order", "mdy", "--json")).Json.Int("accepted"));
        Assert.Single(await data.CountsAsync("prima", "1km", "1998-03-06"));
    }

    [Fact]
    public async Task BinaryGarbageIsNoTable()
    {
        using var data = await WithOneRecordAsync();
        var maps = await data.AllMapsAsync();
        // The magic number of gzip (RFC 1952, 2.3.1), then bytes of a fixed sequence, cut off anywhere.
        var bytes = new byte[10_007];
        var state = 12345u;
        for (var i = 0; i < bytes.Length; i++)
            bytes[i] = (byte)((state = state * 1664525 + 1013904223) >> 24);
        (bytes[0], bytes[1], bytes[2]) = (0x1F, 0x8B, 8);
        Assert.Equal(1, (await data.ImportAsync(data.Write("records.csv.gz", bytes))).Exit);
        Assert.Equal(maps, await data.AllMapsAsync());
    }

    [Fact]
    public async Task ALineOfAHundredMegabytesIsRefusedWithoutHoldingIt()
    {
        using var data = await WithOneRecordAsync();
        var file = data.Beside("long.csv");
        await using (var stream = File.Create(file))
        {
            await stream.WriteAsync(Encoding.ASCII.GetBytes(Good.Replace("g1", "g2", StringComparison.Ordinal)));
            var block = new byte[1_000_000];
            block.AsSpan().Fill((byte)'x');
            for (var i = 0; i < 100; i++)
                await stream.WriteAsync(block);
            await stream.WriteAsync("\ng3,Inventa prima,2007,NZ2563\n"u8.ToArray());
        }

        var run = await data.ImportAsync(file, "--json");
        Assert.Equal((3, 3, 2, 1), (run.Exit, run.Json.Int("read"), run.Json.Int("accepted"), run.Json.Int("refused")));
        var refusals = (await data.RunAsync("refusals", "2")).Out;
        Assert.Contains("1,000,000", refusals.Replace("1000000", "1,000,000", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.True(refusals.Length < 10_000);
    }

    [Fact]
    public async Task PathsThatAreNoReadableFileAreToldSo()
    {
        using var data = await WithOneRecordAsync();
        var maps = await data.AllMapsAsync();
        (await data.ImportAsync(data.Data)).Failed(1, "no meta.xml");
        (await data.ImportAsync(data.Beside("nowhere.csv"))).Failed(1, "nowhere.csv", "cannot be read");
        (await data.ImportAsync("")).Failed(1, "cannot be read");
        (await data.RunAsync("taxa", data.Beside("nowhere.csv"))).Failed(1, "nowhere.csv");
        (await data.RunAsync("taxa", data.Data)).Failed(1, "cannot be read");
        Assert.Equal(maps, await data.AllMapsAsync());
    }

    [Fact]
    public async Task AFileWithoutTheRightToReadIsToldSo()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || Environment.UserName == "root", "The right to read cannot be taken from this user.");
        using var data = await WithOneRecordAsync();
        var file = data.Write("locked.csv", Good);
#pragma warning disable CA1416 // Skipped above where file modes are unknown.
        File.SetUnixFileMode(file, UnixFileMode.None);
#pragma warning restore CA1416
        (await data.ImportAsync(file)).Failed(1, "locked.csv", "cannot be read");
    }

    [Fact]
    public async Task APipeIsToldThatItCannotBeReadTwice()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There are no named pipes among the files of this system.");
        using var data = await WithOneRecordAsync();
        var pipe = data.Beside("pipe");
        using (var make = Process.Start("mkfifo", [pipe]))
            await make.WaitForExitAsync();
        using var fill = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", $"printf 'a,b\\n1,2\\n' > '{pipe}'"]));
        (await data.ImportAsync(pipe)).Failed(1, "pipe", "Save the table as a file");
        fill!.Kill();
    }

    private static async Task<DataDirectory> WithOneRecordAsync()
    {
        var data = await DataDirectory.WithTaxaAsync();
        Assert.Equal(1, (await data.ImportTableAsync(Good)).Int("accepted"));
        return data;
    }
}
