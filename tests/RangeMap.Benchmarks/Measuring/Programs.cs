using System.Diagnostics;

namespace RangeMap.Benchmarks;

/// <summary>Runs other programs.</summary>
internal static class Programs
{
    /// <summary>True when a program is on the path.</summary>
    public static bool Has(string name) => Environment.GetEnvironmentVariable("PATH")!.Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, name)));

    /// <summary>Runs a program to its end; what it said.</summary>
    /// <exception cref="InvalidOperationException">It failed.</exception>
    public static string Run(string program, IReadOnlyList<string> arguments, string? input = null)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true })!;
        var (output, errors) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        if (input is not null)
            process.StandardInput.Write(input);
        process.StandardInput.Close();
        process.WaitForExit();
        return process.ExitCode == 0 ? output.Result : throw new InvalidOperationException($"{program} ended with {process.ExitCode}: {errors.Result.Trim()}");
    }
}
