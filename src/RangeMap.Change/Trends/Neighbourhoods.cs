namespace RangeMap.Change;

/// <summary>
/// The squares that stand for a square when its taxa are foreseen: of those nearest to it the most alike in taxa, each with a weight that
/// falls with both ranks (docs/methods/neighbourhood-frequency.md, eq. 1 and 2; after Hill 2012). The square itself has both ranks 1.
/// </summary>
internal sealed class Neighbourhoods(GroupSurvey survey, SpeciesBits pooled, TrendOptions options)
{
    private readonly PlanePoint[] _centres = [.. survey.Squares.Select(square => square.Centre)];
    private readonly int[] _counts = [.. Enumerable.Range(0, survey.Squares.Count).Select(pooled.Count)];

    /// <summary>Weight of a neighbour.</summary>
    /// <param name="nearness">Its rank by distance, from 1 to <paramref name="nearest"/>.</param>
    /// <param name="likeness">Its rank by likeness, from 1 to <paramref name="alike"/>.</param>
    /// <param name="nearest">Number of nearest squares.</param>
    /// <param name="alike">Number of squares of the neighbourhood.</param>
    internal static double Weight(int nearness, int likeness, int nearest = 200, int alike = 100)
    {
        double far = (nearness - 1.0) / nearest, unlike = (likeness - 1.0) / alike;
        return Math.Pow((1 - far * far) * (1 - unlike * unlike), 4);
    }

    /// <summary>The neighbours of a square with their weights. Ties of distance go to the earlier square, ties of likeness to the nearer.</summary>
    internal (int Square, double Weight)[] Of(int square)
    {
        var near = Nearest(square);
        var ranks = new long[near.Length];
        for (var i = 0; i < near.Length; i++)
            ranks[i] = ((long)Math.Round((1 - Likeness(square, near[i])) * (1 << 30)) << 32) | (uint)i;
        Array.Sort(ranks);

        var neighbours = new (int, double)[Math.Min(options.AlikeSquares, near.Length)];
        for (var rank = 0; rank < neighbours.Length; rank++)
        {
            var nearness = (int)ranks[rank];
            neighbours[rank] = (near[nearness], Weight(nearness + 1, rank + 1, options.NearestSquares, options.AlikeSquares));
        }

        return neighbours;
    }

    private int[] Nearest(int square)
    {
        // Whole metres: rounding cannot make one machine prefer another neighbour.
        var keys = new long[_centres.Length];
        for (var other = 0; other < keys.Length; other++)
            keys[other] = ((long)Math.Round(1000 * PlanePoint.Km(_centres[square], _centres[other])) << 32) | (uint)other;
        // Two squares on one place may not push a square from the head of its own list.
        keys[square] = -1L << 32 | (uint)square;
        Array.Sort(keys);
        return [.. keys.Take(options.NearestSquares).Select(key => (int)key)];
    }

    /// <summary>Sorensen's coefficient: twice the taxa in common over the sum of both; a square is wholly like itself.</summary>
    private double Likeness(int square, int other) =>
        square == other ? 1 : _counts[square] + _counts[other] == 0 ? 0 : 2.0 * pooled.Common(square, other) / (_counts[square] + _counts[other]);
}
