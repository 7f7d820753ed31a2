using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Measures how a taxon's range changed between two periods, or those of a whole group.</summary>
internal static class MeasureChange
{
    private const double MetresPerKm = 1000;

    /// <summary>The measures of one taxon.</summary>
    public static RangeChange Of(DataSnapshot data, Taxon taxon, ChangeQuestion question) =>
        data.Answers.GetOrMake((taxon.Number, question, "change"), () =>
        {
            var isAggregate = data.Members(taxon).Any();
            var group = Measures(data, taxon.Group, isAggregate ? taxon : null, question);
            var index = group.Data.IndexOf(taxon);
            return new RangeChange(taxon, group, index, group.Measures.InFull(index));
        });

    /// <summary>The measures of every taxon of every group, by group and name.</summary>
    public static IReadOnlyList<RangeChange> OfAll(DataSnapshot data, ChangeQuestion question) =>
        data.Answers.GetOrMake((question, "change of all"), () =>
        {
            var all = new List<RangeChange>();
            foreach (var group in data.Taxa.Select(taxon => taxon.Group).Distinct().OrderBy(group => group, StringComparer.Ordinal))
            {
                var measured = Measures(data, group, null, question);
                var taxa = new RangeChange[measured.Data.Taxa.Count];
                Parallel.For(0, taxa.Length, i => taxa[i] = new(measured.Data.Taxa[i], measured, i, measured.Measures.Of(i)));
                all.AddRange(taxa.OrderBy(change => change.Taxon.ScientificName, StringComparer.Ordinal));
            }

            return all;
        });

    /// <summary>What the taxa of a group share, its aggregates left out.</summary>
    public static GroupMeasures GroupOf(DataSnapshot data, string? group, ChangeQuestion question) => Measures(data, group, null, question);

    private static GroupMeasures Measures(DataSnapshot data, string? group, Taxon? aggregate, ChangeQuestion question) =>
        data.Answers.GetOrMake((group, aggregate?.Number, question, "measures of change"), () =>
        {
            var gathered = GroupData.Of(data, group, aggregate, question.Size, [question.From, question.To], question.Quality);
            var options = new ChangeOptions { LandSquares = LandOf(gathered.Plane, question.Size) };
            return new GroupMeasures(gathered, ChangeMeasures.Prepare(gathered.Survey, options));
        });

    /// <summary>The middles of a national grid's squares with land; null on the plane of several grids, and for sizes that land is not known by.</summary>
    private static IReadOnlyList<PlanePoint>? LandOf(INationalGrid plane, SquareSize size)
    {
        if (size is not (SquareSize.Km1 or SquareSize.Km2 or SquareSize.Km5 or SquareSize.Km10))
            return null;
        var land = BaseGeography.Squares.Of(plane.Id, size);
        return land.Count == 0 ? null : [.. land.Select(square => new PlanePoint(square.Centre.Easting / MetresPerKm, square.Centre.Northing / MetresPerKm))];
    }
}

/// <summary>A question about change. Equal questions have equal answers within an edition.</summary>
/// <param name="Size">Side of the squares.</param>
/// <param name="From">The earlier period.</param>
/// <param name="To">The later period.</param>
/// <param name="Quality">Which records count.</param>
internal sealed record ChangeQuestion(SquareSize Size, Period From, Period To, Quality Quality)
{
    /// <summary>Reads a question from the parts of an address or command.</summary>
    /// <exception cref="UserException">A part is missing or cannot be read, or the periods overlap or stand the wrong way round.</exception>
    public static ChangeQuestion Of(string? grid, string? from, string? to, string? quality)
    {
        var (earlier, later) = (One(from, "from", "1990/1999"), One(to, "to", "2010/2019"));
        if (earlier.EndDay > later.FirstDay)
        {
            throw new UserException(
                earlier.FirstDay >= later.EndDay ? "The earlier period comes after the later one." : "The two periods overlap, so a record would count as before and after.", $"{from} and {to}",
                "Give two periods, the earlier first, such as from 1990/1999 and to 2010/2019.") { IsArgument = true };
        }

        return new(Ask.Size(grid), earlier, later, Ask.Quality(quality));
    }

    private static Period One(string? text, string where, string example)
    {
        if (string.IsNullOrWhiteSpace(text))
            throw new UserException("A change needs two periods, and one is missing.", where, $"Give it as an ISO 8601 interval, such as {example}.") { IsArgument = true };
        return PeriodText.TryParse(text.Trim(), out var period, out var why)
            ? period
            : throw new UserException(why!, where, $"Write an ISO 8601 interval, such as {example}.") { IsArgument = true };
    }
}

/// <summary>What the taxa of a group share.</summary>
internal sealed record GroupMeasures(GroupData Data, ChangeMeasures Measures);

/// <summary>How one taxon changed.</summary>
/// <param name="Taxon">The taxon.</param>
/// <param name="Group">What it shares with its group.</param>
/// <param name="Index">Its index there.</param>
/// <param name="Estimates">One a method.</param>
internal sealed record RangeChange(Taxon Taxon, GroupMeasures Group, int Index, IReadOnlyList<ChangeEstimate> Estimates)
{
    /// <summary>What became of each square where it was found.</summary>
    public IEnumerable<(Square Square, SquareFate Fate)> Fates =>
        SquareFates.Of(Group.Data.Survey, Index).Select(fate => (Group.Data.Squares[fate.Square], fate.Fate));
}
