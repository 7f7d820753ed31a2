namespace RangeMap.Change;

/// <summary>
/// How much of what lives in a place its records have shown (docs/methods/effort.md). Both richness estimates are lower bounds, and all
/// need that what was seen once is not entered twice.
/// </summary>
public static class Completeness
{
    /// <summary>
    /// Least number of taxa, seen and unseen, from numbers of records (eq. 1). Chao 1984, Scandinavian Journal of Statistics 11:265-270; the bias-corrected
    /// form where no taxon has two records.
    /// </summary>
    /// <param name="taxa">Taxa seen.</param>
    /// <param name="records">Records in all; at least 1.</param>
    /// <param name="once">Taxa with one record.</param>
    /// <param name="twice">Taxa with two.</param>
    /// <returns>Not below <paramref name="taxa"/>; 0 without records.</returns>
    public static double Chao1(int taxa, int records, int once, int twice) => taxa + Unseen(records, once, twice);

    /// <summary>The same from lists (eq. 2). Chao 1987, Biometrics 43:783-791.</summary>
    /// <param name="taxa">Taxa on any list.</param>
    /// <param name="lists">Number of lists.</param>
    /// <param name="once">Taxa on one list.</param>
    /// <param name="twice">Taxa on two.</param>
    public static double Chao2(int taxa, int lists, int once, int twice) => taxa + Unseen(lists, once, twice);

    /// <summary>
    /// Share of the records to come that would be of taxa seen already (eq. 3). Chao and Jost 2012, Ecology 93:2533-2547.
    /// </summary>
    /// <returns>0 to 1; 0 without records.</returns>
    public static double Coverage(int records, int once, int twice) => Coverage(records, records, once, twice);

    /// <summary>The same from lists (eq. 4).</summary>
    /// <param name="lists">Number of lists.</param>
    /// <param name="entries">Taxa on the lists, each counted on every list that has it.</param>
    /// <param name="once">Taxa on one list.</param>
    /// <param name="twice">Taxa on two.</param>
    public static double CoverageOfLists(int lists, int entries, int once, int twice) => Coverage(lists, entries, once, twice);

    private static double Unseen(int units, int once, int twice)
    {
        if (units <= 0)
            return 0;
        var share = (units - 1.0) / units;
        return twice > 0 ? share * once * once / (2.0 * twice) : share * once * (once - 1.0) / 2;
    }

    private static double Coverage(int units, int total, int once, int twice)
    {
        if (total <= 0 || units <= 0)
            return 0;
        if (once == 0)
            return 1;
        // Without a taxon seen twice the estimate of the rarest takes one for it, as the authors do.
        var rest = twice > 0 ? (units - 1.0) * once / ((units - 1.0) * once + 2.0 * twice) : (units - 1.0) * (once - 1.0) / ((units - 1.0) * (once - 1.0) + 2.0);
        return Math.Clamp(1 - (double)once / total * rest, 0, 1);
    }
}
