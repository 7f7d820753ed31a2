using System.Globalization;

namespace RangeMap.Server;

/// <summary>Shows how far long work has come: one line that counts on a terminal, a plain line now and then elsewhere.</summary>
internal sealed class ProgressLine(TextWriter to, string what, string unit) : IProgress<long>, IDisposable
{
    private const long PlainLineEvery = 1_000_000;
    private readonly bool _terminal = to == Console.Error && !Console.IsErrorRedirected;
    private long _shown;

    /// <inheritdoc/>
    public void Report(long value)
    {
        if (value - _shown < (_terminal ? 10_000 : PlainLineEvery))
            return;
        _shown = value;
        var line = string.Create(CultureInfo.InvariantCulture, $"{what}: {value:N0} {unit}");
        if (_terminal)
            to.Write($"\r{line}");
        else
            to.WriteLine(line);
    }

    /// <summary>Clears the counting line.</summary>
    public void Dispose()
    {
        if (_terminal && _shown > 0)
            to.Write("\r" + new string(' ', what.Length + unit.Length + 20) + "\r");
    }
}
