namespace RangeMap.Change;

/// <summary>
/// One speed of spread with its interval, or the reason why there is none: the three numbers are all present and
/// <see cref="Refused"/> is null, or they are all null and <see cref="Refused"/> is a sentence.
/// </summary>
/// <param name="Method">One of <see cref="SpreadMethods"/>.</param>
/// <param name="N">Number of squares (or of areas, or sectors, as the method says) behind the speed.</param>
public sealed record SpreadEstimate(string Method, int N)
{
    /// <summary>Kilometres per year, or per <see cref="SpreadOptions.TimeUnit"/>; negative when the range draws back.</summary>
    public double? KmPerYear { get; private init; }

    /// <summary>Lower end of the interval, same unit.</summary>
    public double? Low { get; private init; }

    /// <summary>Upper end of the interval, same unit.</summary>
    public double? High { get; private init; }

    /// <summary>Time of the earliest first record; null without any.</summary>
    public double? FirstYear { get; init; }

    /// <summary>Time of the latest first record; null without any.</summary>
    public double? LastYear { get; init; }

    /// <summary>What to bear in mind when reading the number.</summary>
    public string? Note { get; init; }

    /// <summary>Why there is no number; null when there is one.</summary>
    public string? Refused { get; private init; }

    internal static SpreadEstimate Of(string method, FirstRecords records, double speed, Interval interval, string? note) =>
        double.IsFinite(speed) && double.IsFinite(interval.Low) && double.IsFinite(interval.High)
            ? new(method, records.Count)
            {
                KmPerYear = speed,
                Low = interval.Low,
                High = interval.High,
                FirstYear = records.FirstTime,
                LastYear = records.LastTime,
                Note = note,
            }
            : Refuse(method, records, SpreadWords.NotFinite);

    internal static SpreadEstimate Refuse(string method, FirstRecords records, string reason) => new(method, records.Count)
    {
        FirstYear = records.FirstTime,
        LastYear = records.LastTime,
        Refused = reason,
    };
}
