using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>A square size as data names it.</summary>
internal static class SizeText
{
    /// <summary>1m, 10m, 100m, 1km, 2km, 5km, 10km or 100km.</summary>
    public static string Of(SquareSize size)
    {
        var metres = (int)size;
        return metres < 1000
            ? string.Create(CultureInfo.InvariantCulture, $"{metres}m")
            : string.Create(CultureInfo.InvariantCulture, $"{metres / 1000}km");
    }
}
