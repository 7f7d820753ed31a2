using System.ComponentModel;
using System.Diagnostics;
using RangeMap.TestKit;

namespace RangeMap.Maps.Tests.Printed;

/// <summary>Independent readers of PDF, from the Debian package poppler-utils. Where it is not installed its tests are skipped, but on a build server (CI=true) they fail.</summary>
internal static class OtherReader
{
    /// <summary>What a program says of a file.</summary>
    public static string Of(string program, byte[] file, params string[] options)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.File("map.pdf"), file);
        try
        {
            string[] arguments = program == "pdftotext" ? [.. options, folder.File("map.pdf"), "-"] : [.. options, folder.File("map.pdf")];
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            var errors = process.StandardError.ReadToEndAsync();
            var text = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.Equal((0, ""), (process.ExitCode, errors.GetAwaiter().GetResult()));
            return text;
        }
        catch (Win32Exception missing)
        {
            if (Environment.GetEnvironmentVariable("CI") is "true" or "1")
                Assert.Fail($"{missing.Message} (the build server must have the Debian package poppler-utils)");
            Assert.Skip($"{missing.Message} (install the Debian package poppler-utils to run this check)");
            return "";
        }
    }
}
