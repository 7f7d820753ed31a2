namespace RangeMap.Change;

/// <summary>
/// The squares that stand for a square when its taxa are foreseen: of those nearest to it the most alike in taxa, each with a weight that
/// falls with both ranks (docs/methods/neighbourhood-frequency.md, eq. 1 and 2; after Hill 2012). The square itself has both ranks 1.
/// Squares without a find are nobody's neighbours: they tell where recorders did not go.
/// </summary>
internal sealed class Neighbourhoods(GroupSurvey survey, SpeciesBits pooled, TrendOptions options)
{
    private readonly PlanePoint[] _centres = [.. survey.Squares.Select(square => square.Centre)];
    private readonly int[] _counts = [.. Enumerable.Range(0, survey.Squares.Count).Select(pooled.Count)];

    // Squares with a find, ascending.
    private readonly int[] _recorded = [.. Enumerable.Range(0, survey.Squares.Count).Where(square => pooled.Count(square) > 0)];

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

    /// <summary>The neighbours of a square with a find, with their weights. Ties of distance go to the earlier square, ties of likeness to the nearer.</summary>
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
        var keys = new long[_recorded.Length];
        for (var i = 0; i < keys.Length; i++)
        {
            var metres = (long)Math.Round(1000 * PlanePoint.Km(_centres[square], _centres[_recorded[i]]));
            // Two squares on one place may not push a square from the head of its own list.
            keys[i] = (_recorded[i] == square ? -1L : metres) << 32 | (uint)_recorded[i];
        }

        Array.Sort(keys);
        return [.. keys.Take(options.NearestSquares).Select(key => (int)key)];
    }

    /// <summary>Sorensen's coefficient: twice the taxa in common over the sum of both.</summary>
    private double Likeness(int square, int other) =>
        2.0 * pooled.Common(square, other) / (_counts[square] + _counts[other]);
}
