namespace RangeMap.Server;

/// <summary>Where a file that was sent stands. The words are those of the HTTP interface.</summary>
public enum ImportState
{
    /// <summary>The file is here and waits to be told what its columns mean and to be started.</summary>
    Received,

    /// <summary>It waits for the imports before it.</summary>
    Queued,

    /// <summary>Its rows are being read.</summary>
    Running,

    /// <summary>It is part of the data.</summary>
    Done,

    /// <summary>It cannot be imported as it is; nothing of it was kept.</summary>
    Failed,

    /// <summary>It was part of the data and was taken back.</summary>
    Undone,
}

/// <summary>How far an import has come.</summary>
/// <param name="Rows">Rows read.</param>
/// <param name="Fraction">Share of the file that has been read, 0 to 1.</param>
/// <param name="RowsPerSecond">Rows read in a second, on average.</param>
/// <param name="SecondsLeft">Estimate of the seconds that are left; null while there is nothing to estimate from.</param>
public sealed record ImportProgress(long Rows, double Fraction, double RowsPerSecond, double? SecondsLeft)
{
    /// <summary>Works the rate and the time left out.</summary>
    /// <param name="rows">Rows read.</param>
    /// <param name="fraction">Share of the file read.</param>
    /// <param name="took">Time since the first row.</param>
    public static ImportProgress Of(long rows, double fraction, TimeSpan took)
    {
        var seconds = took.TotalSeconds;
        return new(rows, fraction, seconds > 0 ? Math.Round(rows / seconds) : 0, fraction > 0.01 && seconds > 0.2 ? Math.Round(seconds * (1 - fraction) / fraction, 1) : null);
    }
}
