namespace RangeMap.Records;

/// <summary>How many slips of the pen lie between two texts.</summary>
internal static class EditDistance
{
    /// <summary>
    /// Number of insertions, deletions, replacements and exchanges of neighbours that turn one text into the other
    /// (optimal string alignment, which is Damerau's and Levenshtein's distance without a second edit of the same place); more than <paramref name="limit"/> once it is known to exceed it.
    /// </summary>
    public static int Of(ReadOnlySpan<char> a, ReadOnlySpan<char> b, int limit)
    {
        // Three rows of the table: two back, one back, this one.
        var twoBack = new int[b.Length + 1];
        var oneBack = new int[b.Length + 1];
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
            oneBack[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            var least = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replaced = oneBack[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(replaced, Math.Min(oneBack[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    row[j] = Math.Min(row[j], twoBack[j - 2] + 1);
                least = Math.Min(least, row[j]);
            }

            if (least > limit)
                return least;
            (twoBack, oneBack, row) = (oneBack, row, twoBack);
        }

        return oneBack[b.Length];
    }
}
