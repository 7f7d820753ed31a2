using System.Diagnostics;

namespace RangeMap.Maps.Tests;

/// <summary>Programs beside this one that look at what was written.</summary>
internal static class Programs
{
    public static bool Has(string name) => Environment.GetEnvironmentVariable("PATH")!.Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, name)));

    /// <summary>Runs a program; what it said on both channels.</summary>
    public static async Task<string> RunAsync(string name, IReadOnlyList<string> arguments, string folder)
    {
        using var process = Process.Start(new ProcessStartInfo(name, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = folder })!;
        var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync();
        var said = await output + await error;
        Assert.True(process.ExitCode == 0, said);
        return said;
    }
}
