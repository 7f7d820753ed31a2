using Dapper;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>Reads when taxa were recorded in which stage, and at which plants.</summary>
public sealed class SeasonStore(Database database)
{
    /// <summary>The records made at the taxa named, those that share stage, plant, days and quality together.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyList<SeasonEntry> Read(IReadOnlyCollection<int> taxonNumbers) => database.Use<IReadOnlyList<SeasonEntry>>(connection =>
    {
        LookupIndexes.Make(connection);
        return [.. connection.Query<SeasonRow>(SeasonSql.Read, new { Taxa = taxonNumbers }, buffered: false).Select(row => row.ToEntry())];
    });

    private sealed record SeasonRow
    {
        public string? Stage { get; init; }

        public string? Sex { get; init; }

        public string? Host { get; init; }

        public long FirstDay { get; init; }

        public long LastDay { get; init; }

        public long Status { get; init; }

        public long Doubts { get; init; }

        public long Records { get; init; }

        public SeasonEntry ToEntry()
        {
            var one = CubeFold.Count((ReviewStatus)Status, (Doubts)Doubts);
            var count = (int)Records;
            return new(
                Stage ?? SeasonEntry.StageOf(Sex), Host, new(DateOnly.FromDayNumber((int)FirstDay), DateOnly.FromDayNumber((int)LastDay)),
                new(one.All * count, one.Usable * count, one.Confirmed * count));
        }
    }
}
