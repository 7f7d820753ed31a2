using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;

namespace RangeMap.Server;

/// <summary>Gathers what the kinds of printed maps show. All of it comes from the generalised snapshot, as every other answer does.</summary>
internal static class GatherContent
{
    /// <summary>The content of a question.</summary>
    /// <exception cref="UserException">There are more classes than can be told apart.</exception>
    public static MapContent Of(DataSnapshot data, PrintQuestion question) => question.Kind switch
    {
        PrintKind.Presence => Presence(data, question),
        PrintKind.Arrivals => Arrivals(data, question),
        _ => Change(data, question),
    };

    private static MapContent Presence(DataSnapshot data, PrintQuestion question)
    {
        var map = AnswerPresence.Answer(data, new(question.Taxon, question.Grid, question.Quality, question.Periods));
        CheckNumber(map.Periods.Count, question.Ink);
        var legend = Legend.OfPeriods(PropertyNames.Latest, map.Periods);
        var marks = ClassMarks.Of(legend, question.Ink);
        var squares = map.Squares.Where(found => Within(question, found.Square)).ToList();
        var side = question.Grid.ToWords();
        return new(
            map.Periods.Count > 1 ? $"Squares of {side} by the latest period with a record" : $"Squares of {side} with records, {PeriodWords.Of(map.Periods[0].Text)}",
            map.Periods.Count > 1 ? "Last found, and number of squares" : "Found, and number of squares",
            [.. legend.Classes.Zip(marks, (part, mark) => new PrintedClass(PeriodWords.Of(part.Label), mark))],
            [.. squares.Select(found => new PrintedSquare(found.Square, LatestPeriod(found)))],
            squares.Sum(found => found.PerPeriod.Sum(count => (long)count.Records)), question.Region is null ? map.Omitted : null, [], null);
    }

    private static MapContent Arrivals(DataSnapshot data, PrintQuestion question)
    {
        var map = AnswerPresence.Answer(data, new(question.Taxon, question.Grid, question.Quality, ""));
        var arrivals = map.Squares.Where(found => Within(question, found.Square)).ToList();
        var side = question.Grid.ToWords();
        var subject = $"First certain year in each square of {side}";
        const string legendTitle = "First found, and number of squares";
        if (arrivals.Count == 0)
            return new(subject, legendTitle, [], [], 0, map.Omitted, [], null);
        var legend = Legend.OfYears(PropertyNames.Year, arrivals.Min(found => found.FirstYear), arrivals.Max(found => found.FirstYear), ClassMarks.Most(question.Ink));
        var marks = ClassMarks.Of(legend, question.Ink);
        var (fronts, refused) = FrontsOfMap.Of(data, question.Taxon, [.. legend.Classes.Skip(1).Select(part => part.From)]);
        return new(
            subject, legendTitle,
            [.. legend.Classes.Zip(marks, (part, mark) => new PrintedClass(part.Label, mark))],
            [.. arrivals.Select(found => new PrintedSquare(found.Square, ClassOf(legend, found.FirstYear)))],
            arrivals.Sum(found => (long)found.PerPeriod[0].Records), question.Region is null ? map.Omitted : null, fronts,
            "A first record is not the arrival itself: a species may live in a square for years before anyone looks there."
                + (refused is null ? "" : $" No front is drawn: {refused}"));
    }

    private static MapContent Change(DataSnapshot data, PrintQuestion question)
    {
        var asked = question.Change!;
        var periods = $"{asked.From.Text},{asked.To.Text}";
        var map = AnswerPresence.Answer(data, new(question.Taxon, question.Grid, question.Quality, periods));
        var fates = MeasureChange.Of(data, question.Taxon, asked).Fates.Where(fate => Within(question, fate.Square)).ToList();
        var marks = ClassMarks.OfFates(question.Ink);
        // The classes are drawn last first, so that the legend, which turns the order round, shows them in their own.
        var classes = FateLegend.Classes.Select((part, i) => new PrintedClass(part.Label, marks[i])).Reverse().ToList();
        return new(
            $"Gains and losses from {PeriodWords.Of(asked.From.Text)} to {PeriodWords.Of(asked.To.Text)}, squares of {question.Grid.ToWords()}",
            "Number of squares", classes,
            [.. fates.Select(fate => new PrintedSquare(fate.Square, classes.Count - 1 - FateLegend.IndexOf(FateWords.Of(fate.Fate))))],
            map.Squares.Where(found => Within(question, found.Square)).Sum(found => found.PerPeriod.Sum(count => (long)count.Records)), question.Region is null ? map.Omitted : null, [],
            "A gain may be the first visit that was thorough enough, and a loss one that was not. A square counts as visited where the taxon's group was recorded.");
    }

    private static bool Within(PrintQuestion question, Square square) => question.Region is null || question.Region.Holds(square);

    private static void CheckNumber(int classes, PrintInk ink)
    {
        if (classes <= ClassMarks.Most(ink))
            return;
        throw new UserException(
            $"{classes} periods cannot be told apart on paper{(ink == PrintInk.Black ? " in black" : "")}.", "periods",
            $"Ask for at most {ClassMarks.Most(ink)}{(ink == PrintInk.Black ? $", or {ClassMarks.Most(PrintInk.Colour)} in colour" : "")}.") { IsArgument = true };
    }

    private static int LatestPeriod(PresenceSquare square)
    {
        for (var i = square.PerPeriod.Count - 1; i > 0; i--)
        {
            if (square.PerPeriod[i].Records > 0)
                return i;
        }

        return 0;
    }

    private static int ClassOf(Legend legend, int year)
    {
        var i = 0;
        while (legend.Classes[i].To <= year)
            i++;
        return i;
    }
}
