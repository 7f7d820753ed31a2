using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>
/// A recorder in two places far apart on one day: each record is compared with the first of that recorder and day, between the nearest
/// edges of their squares.
/// </summary>
internal sealed class TwoFarPlaces(double farKm)
{
    private readonly FirstSquares _firstSquares = new();
    private (int Recorder, DateOnly Day, long Square) _last;
    private Doubts _lastFound;

    /// <summary>Remembers the place of a visit; in doubt when it is far from the first of that day.</summary>
    public Doubts Add(int recorder, DateOnly day, long square)
    {
        // The rows of a visit mostly stand together.
        if (_last == (recorder, day, square))
            return _lastFound;
        _last = (recorder, day, square);
        var hash = MixedHash.Of((ulong)recorder, (ulong)day.DayNumber);
        var first = _firstSquares.GetOrAdd(hash, square);
        var isFar = first != square && SquareDistance.Km(Square.FromCode(first), Square.FromCode(square)) > farKm;
        return _lastFound = isFar ? Doubts.TwoFarPlaces : Doubts.None;
    }
}
