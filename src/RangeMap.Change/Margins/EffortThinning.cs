namespace RangeMap.Change;

/// <summary>
/// Makes the effort of two periods equal by drawing, from the records of the better recorded one, as many as the other has
/// (docs/methods/margins.md, eq. 3 and 4). Hassall and Thompson 2010, Methods in Ecology and Evolution 1:343-350, recommend it for margins.
/// </summary>
/// <param name="RecordsBefore">Records of the group in the earlier period.</param>
/// <param name="RecordsAfter">In the later one.</param>
public readonly record struct EffortThinning(long RecordsBefore, long RecordsAfter)
{
    /// <summary>True where the later period is the better recorded one and is thinned.</summary>
    public bool ThinsLater => RecordsAfter > RecordsBefore;

    internal static EffortThinning Of(SurveyEffort effort) => new(effort.Periods[0].Records, effort.Periods[^1].Records);

    /// <summary>Chance that a square keeps a record when its period is thinned; 1 in the period that is not.</summary>
    /// <param name="records">Records of the taxon in the square.</param>
    /// <param name="later">True for the later period.</param>
    public double ChanceKept(int records, bool later)
    {
        if (later != ThinsLater || RecordsBefore == RecordsAfter)
            return 1;
        return ChanceKept(records, Math.Max(RecordsBefore, RecordsAfter), Math.Min(RecordsBefore, RecordsAfter));
    }

    /// <summary>
    /// Chance that at least one of n records is among m drawn without replacement from M: 1 - C(M - n, m) / C(M, m) (eq. 3).
    /// </summary>
    /// <param name="records">n, at least 0.</param>
    /// <param name="all">M, at least n.</param>
    /// <param name="drawn">m, 0 to M.</param>
    public static double ChanceKept(int records, long all, long drawn)
    {
        if (drawn <= 0 || records <= 0)
            return 0;
        var none = 1.0;
        for (var i = 0; i < records && none > 0; i++)
            none *= Math.Max(0, all - drawn - i) / (double)(all - i);
        return 1 - none;
    }
}
