using System.Diagnostics;
using RangeMap.ImportProcess;

namespace RangeMap.Store.Tests;

/// <summary>The program beside the tests that imports in a process of its own.</summary>
internal sealed class ChildImport : IDisposable
{
    private readonly Process _process;

    private ChildImport(Process process) => _process = process;

    /// <summary>Starts it.</summary>
    /// <param name="arguments">What it shall do.</param>
    /// <param name="limitBlocks">Most blocks of 512 bytes that it may write to one file; null for no limit.</param>
    public static ChildImport Start(IReadOnlyList<string> arguments, int? limitBlocks = null)
    {
        var start = new ProcessStartInfo { RedirectStandardOutput = true, FileName = "dotnet" };
        if (limitBlocks is { } blocks)
        {
            // The signal at the limit is ignored, so that writing fails as it does on a full disk. The runtime's own
            // large mappings count as files unless this is switched off.
            start.FileName = "/bin/sh";
            start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
            start.ArgumentList.Add("-c");
            start.ArgumentList.Add(FormattableString.Invariant($"trap '' XFSZ; ulimit -f {blocks}; exec dotnet \"$@\""));
            start.ArgumentList.Add("dotnet");
        }

        start.ArgumentList.Add("exec");
        start.ArgumentList.Add(typeof(LargeImport).Assembly.Location);
        foreach (var argument in arguments)
            start.ArgumentList.Add(argument);
        return new(Process.Start(start)!);
    }

    /// <summary>Waits until it says something; false when it ends without.</summary>
    public bool WaitFor(string line)
    {
        while (_process.StandardOutput.ReadLine() is { } said)
        {
            if (said == line)
                return true;
        }

        return false;
    }

    /// <summary>Ends it as a power cut would: at once, without a word to it.</summary>
    public void Kill()
    {
        _process.Kill();
        _process.WaitForExit();
    }

    /// <summary>Waits for its end; gives the last line that it said.</summary>
    public string Finish()
    {
        var said = _process.StandardOutput.ReadToEnd();
        _process.WaitForExit();
        return said.TrimEnd().Split('\n')[^1];
    }

    public void Dispose()
    {
        if (!_process.HasExited)
            Kill();
        _process.Dispose();
    }
}
