using RangeMap.Grids;

namespace RangeMap.Presence;

/// <summary>When a taxon was first certainly present in a square.</summary>
/// <param name="Square">The square.</param>
/// <param name="Year">The first year by whose end it was certainly there.</param>
/// <param name="Centre">The square's centre on the British National Grid, metres, whatever its own grid, so that distances can be taken across grids.</param>
public readonly record struct Arrival(Square Square, int Year, EastNorth Centre)
{
    /// <summary>The first arrival in every square of a taxon, over all dates, ascending by square.</summary>
    public static IReadOnlyList<Arrival> Of(SizedCube cube, Quality quality)
    {
        var map = PresenceFold.Fold(cube, [new(int.MinValue, int.MaxValue, "../..")], quality);
        return [.. map.Squares.Select(found => new Arrival(found.Square, found.FirstYear, CommonCentre(found.Square)))];
    }

    /// <summary>A square's centre on the British National Grid, metres.</summary>
    public static EastNorth CommonCentre(Square square)
    {
        if (square.Grid == GridId.British)
            return square.Centre;
        var place = NationalGrid.Get(square.Grid).ToLatLon(square.Centre);
        return NationalGrid.Get(GridId.British).FromLatLon(place);
    }
}
