namespace RangeMap.Records;

/// <summary>Finds the names of a list that are closest to one that is not in it.</summary>
internal static class NearestNames
{
    private const int Most = 3;
    private const int LongestCompared = 100;

    /// <summary>Up to three names within a third of the name's length in edits (at most 6), the closest first.</summary>
    public static IReadOnlyList<string> Of(string name, IReadOnlyList<string> names)
    {
        if (name.Length is 0 or > LongestCompared)
            return [];
        var limit = Math.Min(6, Math.Max(2, name.Length / 3));
        var wanted = name.ToUpperInvariant();
        return [.. names
            .Where(n => Math.Abs(n.Length - name.Length) <= limit)
            .Select(n => (Name: n, Edits: Distance(wanted, n.ToUpperInvariant(), limit)))
            .Where(n => n.Edits <= limit)
            .OrderBy(n => n.Edits).ThenBy(n => n.Name, StringComparer.Ordinal)
            .Take(Most).Select(n => n.Name)];
    }

    /// <summary>
    /// Number of insertions, deletions, replacements and exchanges of neighbours that turn one text into the other
    /// (optimal string alignment); more than <paramref name="limit"/> once it is known to exceed it.
    /// </summary>
    internal static int Distance(ReadOnlySpan<char> a, ReadOnlySpan<char> b, int limit)
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
