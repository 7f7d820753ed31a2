namespace RangeMap.Change;

/// <summary>
/// Where the range ends in each of four directions: the mean of its ten outermost squares, and how far that moved outwards at equal effort
/// (docs/methods/margins.md, eq. 1 to 5). Thomas and Lennon 1999, Nature 399:213. All four directions are always given, because a shift in one alone says little.
/// </summary>
public static class TenSquareMargin
{
    private const int Outermost = 10;

    private static readonly (string Method, double East, double North)[] Directions =
        [(ChangeMethods.MarginNorth, 0, 1), (ChangeMethods.MarginSouth, 0, -1), (ChangeMethods.MarginEast, 1, 0), (ChangeMethods.MarginWest, -1, 0)];

    /// <summary>Mean of the ten greatest numbers, or of all where there are fewer.</summary>
    public static double MeanOfTen(IEnumerable<double> positions) => positions.OrderDescending().Take(Outermost).Average();

    internal static IEnumerable<ChangeEstimate> Measure(TaxonSquares taxon) => Directions.Select(direction => Measure(taxon, direction.Method, direction.East, direction.North));

    private static ChangeEstimate Measure(TaxonSquares taxon, string method, double east, double north)
    {
        const string unit = "km";
        var n = Math.Min(taxon.Before.Length, taxon.After.Length);
        var least = taxon.Options.LeastMarginSquares;
        if (n < least)
            return ChangeEstimate.Refuse(taxon.Taxon, method, unit, n, $"Not enough squares: {taxon.Before.Length} and {taxon.After.Length} of at least {least} in each period.");
        var (before, after) = (Line.Of(taxon, later: false, east, north), Line.Of(taxon, later: true, east, north));
        var (shift, error) = Shift(taxon, before, after);
        var reach = StudentQuantile.Of(Math.Max(1, Math.Min(before.Blocks, after.Blocks) - 1)) * error;
        return ChangeEstimate.Of(taxon.Taxon, method, unit, n, shift, new(shift - reach, shift + reach)) with
        {
            Before = before.Margin,
            After = after.Margin,
            Note = NoteOf(taxon, after, east, north),
        };
    }

    /// <summary>The shift at equal effort, and its standard error over draws of blocks and records together.</summary>
    private static (double Shift, double Error) Shift(TaxonSquares taxon, Line before, Line after)
    {
        var chance = new Pcg(taxon.Options.Seed, (ulong)taxon.Taxon);
        double thinned = 0, sum = 0, squares = 0;
        foreach (var drawn in taxon.Prepared.BlockDraws)
        {
            thinned += after.MarginOf(null, ref chance) - before.MarginOf(null, ref chance);
            var both = after.MarginOf(drawn, ref chance) - before.MarginOf(drawn, ref chance);
            (sum, squares) = (sum + both, squares + both * both);
        }

        var draws = taxon.Prepared.BlockDraws.Length;
        return (thinned / draws, Math.Sqrt(Math.Max(0, (squares - sum * sum / draws) / (draws - 1))));
    }

    private static string NoteOf(TaxonSquares taxon, Line after, double east, double north)
    {
        var thinning = taxon.Prepared.Thinning;
        var effort = thinning.RecordsBefore == thinning.RecordsAfter
            ? "The two periods have as many records."
            : $"At equal effort: of the {(thinning.ThinsLater ? "later" : "earlier")} period's records as many were drawn as the other has.";
        if (taxon.Options.Land is not { } land)
            return effort;
        var end = (east, north) switch { (0, > 0) => land.North, (0, < 0) => -land.South, ( > 0, _) => land.East, _ => -land.West };
        return after.Margin > end - 2 * taxon.Options.SquareSideKm ? $"{effort} The margin has reached the coast and cannot move farther." : effort;
    }

    /// <summary>The squares of one period along one direction, the outermost first.</summary>
    private sealed class Line
    {
        private readonly double[] _position;
        private readonly double[] _kept;
        private readonly int[] _block;

        private Line(double[] position, double[] kept, int[] block)
        {
            (_position, _kept, _block) = (position, kept, block);
            Margin = MeanOfTen(position);
            Blocks = block.Distinct().Count();
        }

        /// <summary>The margin as recorded, km in the direction.</summary>
        public double Margin { get; }

        public int Blocks { get; }

        public static Line Of(TaxonSquares taxon, bool later, double east, double north)
        {
            var finds = taxon.Prepared.Survey.Periods[later ? ^1 : 0].Found.OfTaxon(taxon.Taxon).ToArray();
            var position = Array.ConvertAll(finds, find => -(taxon.Squares[find.Index].Centre.X * east + taxon.Squares[find.Index].Centre.Y * north));
            Array.Sort(position, finds);
            return new(
                Array.ConvertAll(position, p => -p),
                Array.ConvertAll(finds, find => taxon.Prepared.Thinning.ChanceKept(find.Records, later)),
                Array.ConvertAll(finds, find => taxon.Blocks.OfSquare[find.Index]));
        }

        /// <summary>The margin of one draw: of blocks where they are given, and of records.</summary>
        public double MarginOf(byte[]? drawn, ref Pcg chance)
        {
            var (sum, count) = (0.0, 0);
            for (var i = 0; i < _position.Length && count < Outermost; i++)
            {
                var times = drawn is null ? 1 : drawn[_block[i]];
                if (times == 0 || (_kept[i] < 1 && !chance.NextChance(_kept[i])))
                    continue;
                times = Math.Min(times, Outermost - count);
                (sum, count) = (sum + times * _position[i], count + times);
            }

            return count == 0 ? _position[^1] : sum / count;
        }
    }
}
