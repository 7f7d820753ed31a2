namespace RangeMap.Records;

/// <summary>How much room is made for an expected number of rows.</summary>
internal static class ExpectedRows
{
    /// <summary>Room for more is made as it is needed: the expectation may be wrong, and its memory is taken at once.</summary>
    private const long Most = 20_000_000;

    /// <summary>Slots of a table that is at most seven tenths full.</summary>
    public static int SlotsFor(long rows) => (int)(Math.Clamp(rows, 0, Most) / 0.68);
}
