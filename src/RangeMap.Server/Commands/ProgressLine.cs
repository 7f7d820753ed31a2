using System.Globalization;

namespace RangeMap.Server;

/// <summary>Shows how far long work has come: one line that counts on a terminal, a plain line now and then elsewhere.</summary>
internal sealed class ProgressLine(TextWriter to, string what, string unit) : IProgress<ImportProgress>, IDisposable
{
    private const long PlainLineEvery = 1_000_000;
    private readonly bool _terminal = to == Console.Error && !Console.IsErrorRedirected;
    private readonly int _width = what.Length + unit.Length + 60;
    private long _shown;

    /// <inheritdoc/>
    public void Report(ImportProgress value)
    {
        if (value.Rows - _shown < (_terminal ? 10_000 : PlainLineEvery))
            return;
        _shown = value.Rows;
        var line = LineOf(value);
        if (_terminal)
            to.Write($"\r{line.PadRight(_width)}");
        else
            to.WriteLine(line);
    }

    private string LineOf(ImportProgress value)
    {
        var culture = CultureInfo.InvariantCulture;
        var share = value.Fraction > 0 ? string.Create(culture, $" ({value.Fraction:P0})") : "";
        var rate = value.RowsPerSecond > 0 ? string.Create(culture, $", {value.RowsPerSecond:N0} a second") : "";
        var left = value.SecondsLeft is { } seconds ? string.Create(culture, $", {seconds:N0} s left") : "";
        return string.Create(culture, $"{what}: {value.Rows:N0} {unit}{share}{rate}{left}");
    }

    /// <summary>Clears the counting line.</summary>
    public void Dispose()
    {
        if (_terminal && _shown > 0)
            to.Write("\r" + new string(' ', _width) + "\r");
    }
}
