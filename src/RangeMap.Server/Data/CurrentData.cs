using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>
/// Gives the newest state of the data. It looks for a new edition at most twice a second, so an import by another
/// process shows within that time and a request for a tile costs no question to the database.
/// </summary>
public sealed class CurrentData(Database database, TimeProvider clock, FrozenEditions? frozen = null, KeptPastForecasts? past = null)
{
    private static readonly TimeSpan LookEvery = TimeSpan.FromMilliseconds(500);

    private readonly Lock _lock = new();
    private readonly Editions _editions = new(database);
    private DataSnapshot? _snapshot;
    private long _lookedAt;
    private volatile bool _lookAgain;

    /// <summary>The data of a folder, with its frozen editions and what is kept on file of past forecasts.</summary>
    public static CurrentData Of(DataFolder folder, TimeProvider clock) => new(folder.Database, clock, new(folder.Path), new(folder.Path));

    /// <summary>Lets the next question look for a new edition at once.</summary>
    public void LookAgain() => _lookAgain = true;

    /// <summary>The data now, if that is known without looking; null once it is time to look again.</summary>
    internal DataSnapshot? Known => !_lookAgain && _snapshot is { } known && clock.GetElapsedTime(Volatile.Read(ref _lookedAt)) < LookEvery ? known : null;

    /// <summary>The data now.</summary>
    public DataSnapshot Now()
    {
        if (Known is { } known)
            return known;
        lock (_lock)
        {
            _lookAgain = false;
            for (var edition = _editions.Current(); _snapshot?.Edition.Number != edition.Number; edition = _editions.Current())
                _snapshot = new(new LiveState(database, edition, clock), past);
            Volatile.Write(ref _lookedAt, clock.GetTimestamp());
            return _snapshot;
        }
    }

    /// <summary>The frozen edition of an identifier, or the data now where none is named.</summary>
    /// <exception cref="UserException">There is no such edition.</exception>
    public DataSnapshot At(string? edition) => string.IsNullOrEmpty(edition) ? Now() : (frozen ?? throw FrozenEditions.Unknown(edition)).Open(edition);
}
