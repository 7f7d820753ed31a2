using CsCheck;

namespace RangeMap.Change.Tests.Trends;

/// <summary>Surveys made from other surveys, and small ones of any shape.</summary>
internal static class Surveys
{
    /// <summary>Conditions that let nearly everything be tried.</summary>
    internal static readonly ChangeOptions Lenient = new()
    {
        Trends = new()
        {
            LeastTaxaRelative = 5,
            LeastSquaresBefore = 1,
            LeastTaxaNeighbourhood = 10,
            LeastSquaresNeighbourhood = 20,
            NearestSquares = 10,
            AlikeSquares = 5,
            LeastSquaresFound = 2,
            LeastSquaresVisited = 2,
            LeastFinds = 2,
            LeastOthers = 1,
            LeastSquaresRepeated = 2,
            LeastDetection = 0.001,
        },
    };

    /// <summary>Up to 40 squares, 14 taxa and two periods, with lists that can be empty, full, or nearly always the same.</summary>
    internal static readonly Gen<GroupSurvey> Any = Gen.Select(Gen.Int[0, 40], Gen.Int[1, 14], Gen.ULong, Gen.Double[0, 1], Gen.Double[0, 6]).Select((squares, taxa, seed, commonness, visits) =>
    {
        var chance = new Pcg(seed);
        SurveySquare[] all = [.. Enumerable.Range(0, squares).Select(i => SurveySquare.Upright(i % 7 * 10, i / 7 * 10, 10))];
        return new GroupSurvey(all, taxa, [Some(1990, ref chance), Some(2005, ref chance)]);

        SurveyPeriod Some(int year, ref Pcg chance)
        {
            var lists = new List<(int Square, int Day, int Recorder, int[] Taxa)>();
            for (var square = 0; square < squares; square++)
            {
                for (var visit = chance.NextIndex(1 + (int)visits); visit > 0; visit--)
                {
                    var list = new List<int>();
                    for (var taxon = 0; taxon < taxa; taxon++)
                    {
                        if (chance.NextChance(taxon % 2 == 0 ? commonness : commonness * commonness))
                            list.Add(taxon);
                    }

                    lists.Add((square, new DateOnly(year + chance.NextIndex(5), 6, 1).DayNumber, 0, [.. list]));
                }
            }

            return Period(squares, taxa, year, year + 4, lists);
        }
    });

    internal static GroupSurvey Renumbered(GroupSurvey survey, Func<int, int> number) => new(
        survey.Squares, survey.Taxa, [.. survey.Periods.Select(period => Copied(survey, period, survey.Squares.Count, number))]);

    internal static GroupSurvey WithEmptySquares(GroupSurvey survey, int more) => new(
        [.. survey.Squares, .. Enumerable.Range(0, more).Select(i => SurveySquare.Upright(5 + i % 10 * 10, 5 + i / 10 * 10, 10))],
        survey.Taxa,
        [.. survey.Periods.Select(period => Copied(survey, period, survey.Squares.Count + more, taxon => taxon))]);

    internal static GroupSurvey Moved(GroupSurvey survey, double east, double north) => new(
        [.. survey.Squares.Select(square => SurveySquare.Upright(square.SouthWest.X + east, square.SouthWest.Y + north, 10))], survey.Taxa, survey.Periods);

    internal static GroupSurvey Exchanged(GroupSurvey survey) => new(survey.Squares, survey.Taxa, [.. survey.Periods.Reverse()]);

    internal static SurveyPeriod Period(int squares, int taxa, int first, int last, List<(int Square, int Day, int Recorder, int[] Taxa)> lists) => new(
        $"{first}/{last}", first, last, FoundTable.Of(squares, taxa, lists.SelectMany(list => list.Taxa.Select(taxon => (list.Square, taxon, 1)))), VisitTable.Of(squares, lists));

    private static SurveyPeriod Copied(GroupSurvey survey, SurveyPeriod period, int squares, Func<int, int> number)
    {
        var lists = period.Visits.All.ToArray().Select(visit => (visit.Square, visit.Day, visit.Recorder, period.Visits.List(visit).ToArray().Select(number).ToArray())).ToList();
        return Period(squares, survey.Taxa, period.FirstYear, period.LastYear, lists);
    }
}
