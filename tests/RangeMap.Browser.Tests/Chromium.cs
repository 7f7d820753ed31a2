using Microsoft.Playwright;

namespace RangeMap.Browser.Tests;

/// <summary>The Chromium that the machine has; nothing is downloaded.</summary>
internal static class Chromium
{
    /// <summary>Why browser tests are skipped where there is none.</summary>
    public const string Missing = "No chromium on this machine. Install it (Debian: apt-get install chromium) to run the browser tests.";

    // The sandbox refuses to run as root, which continuous integration often is; the rest keeps it from calling its maker at every start.
    private static readonly string[] Arguments =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    /// <summary>The program on the search path, or null.</summary>
    public static string? Find() =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Append("/usr/bin")
            .SelectMany(folder => new[] { Path.Combine(folder, "chromium"), Path.Combine(folder, "chromium-browser") })
            .FirstOrDefault(File.Exists);

    /// <summary>Starts it without a window and with an empty profile.</summary>
    public static Task<IBrowser> StartAsync(IPlaywright playwright, string program) =>
        playwright.Chromium.LaunchAsync(new() { ExecutablePath = program, Args = Arguments });
}
