namespace RangeMap.Change;

/// <summary>How thoroughly one square was searched in one period.</summary>
/// <param name="Visits">Visits, with or without finds.</param>
/// <param name="Recorders">Different recorders or parties among them that are named.</param>
/// <param name="Records">Records of the group, also those whose date makes no visit.</param>
/// <param name="MeanListLength">Mean number of taxa on a visit; 0 without visits.</param>
/// <param name="MedianListLength">Median number of taxa on a visit, the mean of the middle two where visits are even; 0 without visits.</param>
/// <param name="ByRecords">Taxa and completeness from the records (Chao1).</param>
/// <param name="ByLists">Taxa and completeness from the visits' lists (Chao2); smaller where records have no visit.</param>
/// <param name="WellSurveyed">True where visits and coverage of the lists reach the thresholds of <see cref="ChangeOptions"/>.</param>
public readonly record struct SquareEffort(
    int Visits, int Recorders, long Records, double MeanListLength, double MedianListLength, Richness ByRecords, Richness ByLists, bool WellSurveyed)
{
    /// <summary>Number of taxa found.</summary>
    public int Taxa => ByRecords.Observed;

    /// <summary>True where the square was looked at: it has a visit or a record.</summary>
    public bool Surveyed => Visits > 0 || Records > 0;
}
