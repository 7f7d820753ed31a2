namespace RangeMap.Change;

/// <summary>Change of a taxon's range between the first and the last period of a survey: its size, its middle and its margins.</summary>
public static class RangeSizeChange
{
    /// <summary>Measures a survey for one taxon after the other.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static Prepared Prepare(GroupSurvey survey, ChangeOptions options, SurveyEffort? effort = null)
    {
        options.ThrowIfOutOfRange();
        return new(survey, options, effort ?? SurveyEffort.Of(survey, options));
    }

    /// <summary>Every measure of one taxon, each with its interval or the reason why there is none.</summary>
    public static IReadOnlyList<ChangeEstimate> Measure(GroupSurvey survey, int taxon, ChangeOptions options) => Prepare(survey, options).Of(taxon);

    /// <summary>What the taxa of a survey share.</summary>
    public sealed class Prepared
    {
        internal Prepared(GroupSurvey survey, ChangeOptions options, SurveyEffort effort)
        {
            Survey = survey;
            Options = options;
            Blocks = SquareBlocks.Of(survey.Squares, options);
            var count = survey.Squares.Count;
            (SurveyedInBoth, WellSurveyedInBoth) = (new bool[count], new bool[count]);
            if (survey.Periods.Count < 2)
                return;
            for (var square = 0; square < count; square++)
            {
                SurveyedInBoth[square] = survey.Periods[0].Surveyed(square) && survey.Periods[^1].Surveyed(square);
                WellSurveyedInBoth[square] = effort.Of(0)[square].IsWellSurveyed(options) && effort.Of(survey.Periods.Count - 1)[square].IsWellSurveyed(options);
            }

            BlockDraws = Draw(Blocks.Count, options);
            Thinning = EffortThinning.Of(effort);
        }

        internal GroupSurvey Survey { get; }

        internal ChangeOptions Options { get; }

        internal SquareBlocks Blocks { get; }

        internal bool[] SurveyedInBoth { get; }

        internal bool[] WellSurveyedInBoth { get; }

        /// <summary>How often each block was drawn, one array a draw; the same for every taxon.</summary>
        internal byte[][] BlockDraws { get; } = [];

        internal EffortThinning Thinning { get; }

        /// <summary>Every measure of one taxon.</summary>
        /// <param name="taxon">Its index; safe to ask from several threads.</param>
        public IReadOnlyList<ChangeEstimate> Of(int taxon)
        {
            if (Survey.Periods.Count < 2)
                return [.. Methods.Select(m => ChangeEstimate.Refuse(taxon, m.Method, m.Unit, 0, "A change needs two periods."))];
            var squares = TaxonSquares.Of(this, taxon);
            return
            [
                SquareCounts.All(squares), SquareCounts.Both(squares), SquareCounts.WellSurveyed(squares),
                Extent.Measure(squares), OccupancyArea.Measure(squares), Centroid.Measure(squares),
                .. TenSquareMargin.Measure(squares), GammaMargin.Measure(squares),
            ];
        }

        private static readonly (string Method, string Unit)[] Methods =
        [
            (ChangeMethods.Squares, "%"), (ChangeMethods.SquaresBoth, "%"), (ChangeMethods.SquaresSurveyed, "%"), (ChangeMethods.Extent, "%"),
            (ChangeMethods.OccupancyArea, "%"), (ChangeMethods.Centroid, "km"), (ChangeMethods.MarginNorth, "km"), (ChangeMethods.MarginSouth, "km"),
            (ChangeMethods.MarginEast, "km"), (ChangeMethods.MarginWest, "km"), (ChangeMethods.MarginGamma, "km"),
        ];

        private static byte[][] Draw(int blocks, ChangeOptions options)
        {
            var draws = new byte[options.Draws][];
            for (var d = 0; d < draws.Length; d++)
            {
                var chance = new Pcg(options.Seed, (ulong)d);
                draws[d] = new byte[blocks];
                for (var b = 0; b < blocks; b++)
                    draws[d][chance.NextIndex(blocks)]++;
            }

            return draws;
        }
    }
}
