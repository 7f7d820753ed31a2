namespace RangeMap.Change;

/// <summary>Everything measured about one spread, side by side: agreement is the message, not any single figure.</summary>
/// <param name="Squares">Number of squares with a first record.</param>
/// <param name="Estimators">One entry per method, the speed to quote first.</param>
/// <param name="Sectors">One entry per bearing sector; empty where only distances are known.</param>
/// <param name="Phases">Two entries where the speed clearly changed once; empty where one speed will do or years are few.</param>
/// <param name="Summary">The findings in words.</param>
public sealed record SpreadReport(
    int Squares,
    IReadOnlyList<SpreadEstimate> Estimators,
    IReadOnlyList<SectorSpeed> Sectors,
    IReadOnlyList<SpreadPhase> Phases,
    string Summary)
{
    /// <summary>Where distances are measured from; null where only distances are known or there are no rows.</summary>
    public SpreadOrigin? Origin { get; init; }

    /// <summary>How the front speed depends on where the origin is put; null where there is no front speed.</summary>
    public OriginRange? OriginRange { get; init; }

    /// <summary>The line of the front; null where there is no front speed.</summary>
    public FrontLine? Line { get; init; }

    /// <summary>Squares far ahead of the front, in order of time; they are left out of the front's line and of the phases.</summary>
    public IReadOnlyList<SpreadJump> Jumps { get; init; } = [];

    /// <summary>Time of the earliest first record; null without any.</summary>
    public double? FirstYear { get; init; }

    /// <summary>Time of the latest first record; null without any.</summary>
    public double? LastYear { get; init; }

    /// <summary>The estimate of a method of <see cref="SpreadMethods"/>.</summary>
    /// <exception cref="InvalidOperationException">The report has no such method.</exception>
    public SpreadEstimate By(string method) => Estimators.Single(e => e.Method == method);
}
