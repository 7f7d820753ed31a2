using System.Globalization;
using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Answers where a taxon was found, per square and period.</summary>
public static class AnswerPresence
{
    /// <summary>The presence map for a question; kept while the edition lasts.</summary>
    public static PresenceMap Answer(DataSnapshot data, PresenceQuestion question)
    {
        // Boxes are of endless number, and would push out what is asked again.
        return question.Box is null ? data.Answers.GetOrMake(question, Fold) : Fold();
        PresenceMap Fold() => PresenceFold.Fold(CubeOf(data, question), question.PeriodList, question.Quality, data.Effort(question.Taxon, question.Size));
    }

    private static SizedCube CubeOf(DataSnapshot data, PresenceQuestion question) =>
        question is { Region: null, Box: null } ? data.Cube(question.Taxon, question.Size) : SizedCube.Of(data.Cube(question.Taxon), question.Size, question.Wants);

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
    /// <summary>Region that reaches into the squares; null for everywhere.</summary>
    internal NamedRegion? Region { get; init; }

    /// <summary>Box that the squares touch; null for everywhere.</summary>
    internal DegreeBox? Box { get; init; }

    /// <summary>The periods.</summary>
    internal IReadOnlyList<Period> PeriodList { get; } = Ask.Periods(Periods);

    /// <summary>Reads a question from the parts of an address or command.</summary>
    /// <exception cref="UserException">A part cannot be read.</exception>
    public static PresenceQuestion Of(DataSnapshot data, string taxon, string? grid, string? periods, string? quality, string? region = null, string? bbox = null) =>
        new(data.Find(taxon), Ask.Size(grid), Ask.Quality(quality), periods ?? "") { Region = KnownRegions.Of(data).Find(region), Box = ExportAsk.Box(bbox) };

    /// <summary>True for a square of the region and box asked.</summary>
    internal bool Wants(Square square) => (Box is not { } box || box.Intersects(DegreeBox.Of(square))) && Region?.Holds(square) != false;

    /// <summary>Where squares were asked for, by name, for readers of the map.</summary>
    internal IReadOnlyList<KeyValuePair<string, string>> PlaceWords()
    {
        var words = new List<KeyValuePair<string, string>>();
        if (Region is not null)
            words.Add(new("region", Region.Name));
        if (Box is { } box)
            words.Add(new("within", string.Create(CultureInfo.InvariantCulture, $"{box.West},{box.South},{box.East},{box.North}")));
        return words;
    }

    /// <summary>By taxon number, so that the comparison on every tile is short.</summary>
    public bool Equals(PresenceQuestion? other) =>
        other is not null && other.Taxon.Number == Taxon.Number && other.Size == Size && other.Quality == Quality && other.Periods == Periods && other.Region == Region && other.Box == Box;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Taxon.Number, Size, Quality, Periods);
}
