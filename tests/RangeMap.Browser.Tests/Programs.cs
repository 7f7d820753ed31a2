using System.Diagnostics;
using RangeMap.TestKit;

namespace RangeMap.Browser.Tests;

/// <summary>Runs programs of this machine in a folder of their own.</summary>
internal static class Programs
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    /// <summary>True where a program lies on the search path.</summary>
    public static bool Has(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));

    /// <summary>Runs a program with a text as its input, and gives the bytes of a file that it must have made.</summary>
    public static async Task<byte[]> FileMadeByAsync(string program, IReadOnlyList<string> arguments, string input, string file, (string Name, string Value)? variable = null)
    {
        using var folder = new TemporaryFolder();
        var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = folder.Path, RedirectStandardInput = true, RedirectStandardError = true, RedirectStandardOutput = true };
        if (variable is { } set)
            start.Environment[set.Name] = set.Value;
        using var process = Process.Start(start)!;
        using var enough = new CancellationTokenSource(Patience);
        await process.StandardInput.WriteAsync(input);
        process.StandardInput.Close();
        var (said, told) = (process.StandardError.ReadToEndAsync(enough.Token), process.StandardOutput.ReadToEndAsync(enough.Token));
        await process.WaitForExitAsync(enough.Token);
        Assert.True(process.ExitCode == 0, $"{program}: {await said} {await told}\n{input}");
        return await File.ReadAllBytesAsync(folder.File(file), enough.Token);
    }
}
