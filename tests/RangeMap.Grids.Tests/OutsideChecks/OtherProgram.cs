using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;

namespace RangeMap.Grids.Tests;

/// <summary>An independent program that converts many places, run as a peer. Where it is not installed its tests are skipped, but on a build server (CI=true) they fail.</summary>
internal static class OtherProgram
{
    /// <summary>Feeds lines to a program and gives its lines back; none of either may be lost.</summary>
    public static IReadOnlyList<string> Convert(string program, string package, IReadOnlyList<string> arguments, IReadOnlyList<string> lines)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        try
        {
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
            var feeding = Task.Run(() =>
            {
                foreach (var line in lines)
                    process.StandardInput.WriteLine(line);
                process.StandardInput.Close();
            }, TestContext.Current.CancellationToken);
            var answers = process.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
            process.WaitForExit();
            SkipUnless(process.ExitCode == 0, $"{program}: {errors.Result}", package);
            feeding.Wait(TestContext.Current.CancellationToken);
            Assert.Equal(lines.Count, answers.Length);
            return answers;
        }
        catch (Win32Exception missing)
        {
            SkipUnless(false, missing.Message, package);
            return [];
        }
    }

    /// <summary>The numbers of a line, separated by spaces or tabs.</summary>
    public static double[] Numbers(string line) =>
        [.. line.Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries).Select(text => double.Parse(text, CultureInfo.InvariantCulture))];

    private static void SkipUnless(bool works, string reason, string package)
    {
        if (works)
            return;
        if (Environment.GetEnvironmentVariable("CI") is "true" or "1")
            Assert.Fail($"{reason} (the build server must have the Debian package {package})");
        Assert.Skip($"{reason} (install the Debian package {package} to run this check)");
    }
}
