namespace RangeMap.Change.Tests;

/// <summary>Small invented surveys: squares of 10 km on a chessboard, two periods, and what was found and visited.</summary>
internal static class Surveys
{
    private static readonly int _day = new DateOnly(2000, 6, 1).DayNumber;

    /// <summary>A block of upright squares, row by row from the south-west.</summary>
    internal static SurveySquare[] Board(int columns, int rows, double west = 200, double south = 100, double side = 10) =>
        [.. Enumerable.Range(0, columns * rows).Select(i => SurveySquare.Upright(west + i % columns * side, south + i / columns * side, side))];

    /// <summary>A survey of two periods; every square that is not left out was visited six times in both, each time with the whole list of what was found.</summary>
    internal static GroupSurvey Visited(
        SurveySquare[] squares, int taxa, IEnumerable<(int, int, int)> before, IEnumerable<(int, int, int)> after, Func<int, bool>? visitedBefore = null, Func<int, bool>? visitedAfter = null) =>
        new(squares, taxa, [Period("1990/1999", 1990, squares, taxa, before, visitedBefore), Period("2010/2019", 2010, squares, taxa, after, visitedAfter)]);

    /// <summary>Each square given holds one taxon, number 0, with one record.</summary>
    internal static IEnumerable<(int, int, int)> One(IEnumerable<int> squares) => squares.Select(square => (square, 0, 1));

    /// <summary>A survey of one taxon in all squares visited in both periods.</summary>
    internal static GroupSurvey OfOne(SurveySquare[] squares, IEnumerable<int> before, IEnumerable<int> after) => Visited(squares, 1, One(before), One(after));

    /// <summary>One method's estimate of taxon 0.</summary>
    internal static ChangeEstimate By(this GroupSurvey survey, string method, ChangeOptions? options = null) =>
        RangeSizeChange.Measure(survey, 0, options ?? new()).Single(estimate => estimate.Method == method);

    private static SurveyPeriod Period(string label, int year, SurveySquare[] squares, int taxa, IEnumerable<(int Square, int Taxon, int Records)> finds, Func<int, bool>? visited)
    {
        var all = finds.ToArray();
        var lists = all.ToLookup(find => find.Square, find => find.Taxon);
        var visits = Enumerable.Range(0, squares.Length).Where(visited ?? (_ => true))
            .SelectMany(square => Enumerable.Range(0, 6).Select(k => (square, _day + k, k + 1, lists[square].ToArray())));
        return new(label, year, year + 9, FoundTable.Of(squares.Length, taxa, all), VisitTable.Of(squares.Length, visits));
    }
}
