using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Answers where a taxon was found, per square and period.</summary>
public static class AnswerPresence
{
    /// <summary>The presence map for a question; kept while the edition lasts.</summary>
    public static PresenceMap Answer(DataSnapshot data, PresenceQuestion question) =>
        data.Answers.GetOrMake(question, () => PresenceFold.Fold(
            data.Cube(question.Taxon, question.Size), question.PeriodList, question.Quality, data.Effort(question.Taxon, question.Size)));

    /// <summary>First arrivals by square.</summary>
    public static IReadOnlyList<Arrival> Arrivals(DataSnapshot data, Taxon taxon, SquareSize size, Quality quality) =>
        data.Answers.GetOrMake((taxon.Number, size, quality, "arrivals"), () => Arrival.Of(data.Cube(taxon, size), quality));
}

/// <summary>A question about presence. Equal questions have equal answers within an edition.</summary>
/// <param name="Taxon">The taxon.</param>
/// <param name="Size">The side of the squares.</param>
/// <param name="Quality">Which records count.</param>
/// <param name="Periods">The periods as text, as asked.</param>
public sealed record PresenceQuestion(Taxon Taxon, SquareSize Size, Quality Quality, string Periods)
{
    /// <summary>The periods.</summary>
    internal IReadOnlyList<Period> PeriodList { get; } = Ask.Periods(Periods);

    /// <summary>Reads a question from the parts of an address or command.</summary>
    /// <exception cref="UserException">A part cannot be read.</exception>
    public static PresenceQuestion Of(DataSnapshot data, string taxon, string? grid, string? periods, string? quality) =>
        new(data.Find(taxon), Ask.Size(grid), Ask.Quality(quality), periods ?? "");

    /// <summary>By taxon number, so that the comparison on every tile is short.</summary>
    public bool Equals(PresenceQuestion? other) =>
        other is not null && other.Taxon.Number == Taxon.Number && other.Size == Size && other.Quality == Quality && other.Periods == Periods;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Taxon.Number, Size, Quality, Periods);
}
