using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>
/// Gives the newest state of the data. It looks for a new edition at most twice a second, so an import by another
/// process shows within that time and a request for a tile costs no question to the database.
/// </summary>
public sealed class CurrentData(Database database, TimeProvider clock)
{
    private static readonly TimeSpan LookEvery = TimeSpan.FromMilliseconds(500);

    private readonly Lock _lock = new();
    private readonly Editions _editions = new(database);
    private DataSnapshot? _snapshot;
    private long _lookedAt;

    /// <summary>The data now.</summary>
    public DataSnapshot Now()
    {
        if (_snapshot is { } known && clock.GetElapsedTime(Volatile.Read(ref _lookedAt)) < LookEvery)
            return known;
        lock (_lock)
        {
            var edition = _editions.Current();
            if (_snapshot is null || _snapshot.Edition.Number != edition.Number)
                _snapshot = new(database, edition, clock);
            Volatile.Write(ref _lookedAt, clock.GetTimestamp());
            return _snapshot;
        }
    }
}
