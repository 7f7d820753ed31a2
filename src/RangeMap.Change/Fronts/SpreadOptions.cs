namespace RangeMap.Change;

/// <summary>How spread is measured. The defaults are those of docs/methods/spread.md.</summary>
public sealed record SpreadOptions
{
    /// <summary>Units of time that count as the start of recording: one season may miss a part of the range by chance.</summary>
    internal const double StartSpan = 2;

    /// <summary>Radius, in sides of a square, beyond which the squares of the start are a range and no point of arrival.</summary>
    internal const double WidespreadSquares = 5;

    /// <summary>Where the spread began; null to take the earliest cluster of squares.</summary>
    public SpreadOrigin? Origin { get; init; }

    /// <summary>Number of the earliest squares, with all others of their last year, whose mean is taken as the origin; at least 1.</summary>
    public int OriginSquares { get; init; } = 3;

    /// <summary>Share of a year's first records that lie behind the front line, in (0, 1).</summary>
    public double Quantile { get; init; } = 0.95;

    /// <summary>Confidence of all intervals, in (0, 1).</summary>
    public double Confidence { get; init; } = 0.95;

    /// <summary>Resamples behind the interval of the front speed, at least 99.</summary>
    public int Resamples { get; init; } = 999;

    /// <summary>Blocks that are resampled as a whole, at least 4; fewer are used where a block would hold less than 5 squares.</summary>
    public int Blocks { get; init; } = 16;

    /// <summary>Seed of the resampling; the same seed gives the same interval.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Least number of squares for the front speed.</summary>
    public int MinimumFrontSquares { get; init; } = 30;

    /// <summary>Least number of years with first records for the front speed.</summary>
    public int MinimumFrontTimes { get; init; } = 6;

    /// <summary>Least number of squares for every other estimator, at least 3.</summary>
    public int MinimumSquares { get; init; } = 10;

    /// <summary>Least number of years with first records for every other estimator, at least 3.</summary>
    public int MinimumTimes { get; init; } = 4;

    /// <summary>Least number of squares for a sector to have a speed, at least 2.</summary>
    public int MinimumSectorSquares { get; init; } = 5;

    /// <summary>Number of equal bearing sectors, the first centred on grid north; 1 to 72.</summary>
    public int SectorCount { get; init; } = 8;

    /// <summary>Side of the squares in kilometres, for their area.</summary>
    public double SquareSideKm { get; init; } = 10;

    /// <summary>Angle of land seen from the origin, radians in (0, 2 pi]: pi from a straight coast, pi / 2 from a corner. Null to take it from the land, or the whole circle where that is not given.</summary>
    public double? OpenAngle { get; init; }

    /// <summary>Centres of the squares with land, on the plane of the records; null where they are not known.</summary>
    public IReadOnlyCollection<PlanePoint>? Land { get; init; }

    /// <summary>
    /// Last year in which the group was recorded at all; null for the last first record. Years up to it without a first
    /// record count as years in which the front stood still.
    /// </summary>
    public double? RecordedUntil { get; init; }

    /// <summary>
    /// First time at which the group was recorded at all; null when not known. A species that was widespread then is
    /// refused: it has no arrival to measure.
    /// </summary>
    public double? RecordedFrom { get; init; }

    /// <summary>What one unit of time is called in sentences.</summary>
    public string TimeUnit { get; init; } = "year";

    /// <summary>Throws when a value lies outside the range stated on it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Names the value.</exception>
    internal void ThrowIfOutOfRange()
    {
        Require(OriginSquares >= 1, nameof(OriginSquares), OriginSquares);
        Require(Quantile > 0 && Quantile < 1, nameof(Quantile), Quantile);
        Require(Confidence > 0 && Confidence < 1, nameof(Confidence), Confidence);
        Require(Resamples >= 99, nameof(Resamples), Resamples);
        Require(Blocks >= 4, nameof(Blocks), Blocks);
        Require(MinimumFrontSquares >= 3, nameof(MinimumFrontSquares), MinimumFrontSquares);
        Require(MinimumFrontTimes >= 2, nameof(MinimumFrontTimes), MinimumFrontTimes);
        Require(MinimumSquares >= 3, nameof(MinimumSquares), MinimumSquares);
        Require(MinimumTimes >= 3, nameof(MinimumTimes), MinimumTimes);
        Require(MinimumSectorSquares >= 2, nameof(MinimumSectorSquares), MinimumSectorSquares);
        Require(SectorCount is >= 1 and <= 72, nameof(SectorCount), SectorCount);
        Require(SquareSideKm > 0 && double.IsFinite(SquareSideKm), nameof(SquareSideKm), SquareSideKm);
        Require(RecordedUntil is null || double.IsFinite(RecordedUntil.Value), nameof(RecordedUntil), RecordedUntil ?? 0);
        Require(RecordedFrom is null || double.IsFinite(RecordedFrom.Value), nameof(RecordedFrom), RecordedFrom ?? 0);
        Require(OpenAngle is null or (> 0 and <= 2 * Math.PI), nameof(OpenAngle), OpenAngle ?? 0);
    }

    private static void Require(bool holds, string name, object value)
    {
        if (!holds)
            throw new ArgumentOutOfRangeException(name, value, "This value of the spread options is out of its range.");
    }
}
