using System.Globalization;
using RangeMap.Change;

namespace RangeMap.Server;

/// <summary>The speed of a spread apart by decade of arrival, and by nation and loaded region.</summary>
internal static class SpeedParts
{
    private const int YearsOfDecade = 10;

    /// <summary>Parts with a measurable speed: decades in order, then regions in the order of the alphabet.</summary>
    public static IReadOnlyList<SpeedPartJson> Of(DataSnapshot data, FittedSpread fitted, ArrivalFit fit)
    {
        var reached = Enumerable.Range(0, fit.Sites.Count).Where(i => fit.Reached(i, fit.LastVisit) >= 0.5).ToList();
        var decades = reached.GroupBy(i => (int)Math.Floor(fit.Squares[i].Surface / YearsOfDecade) * YearsOfDecade).OrderBy(decade => decade.Key)
            .Select(decade => Part(fit, "decade", string.Create(CultureInfo.InvariantCulture, $"{decade.Key}s"), [.. decade]));
        var regions = KnownRegions.Of(data).All.Select(region => Part(fit, "region", region.Name, [.. reached.Where(i => region.Holds(fitted.Squares[i]))]));
        return [.. decades.Concat(regions).OfType<SpeedPartJson>()];
    }

    private static SpeedPartJson? Part(ArrivalFit fit, string kind, string name, List<int> squares) => RadialSpeed.Of(fit, squares) is { } speed
        ? new(kind, name, Math.Round(speed.KmPerYear, 4), Math.Round(speed.Interval.Low, 4), Math.Round(speed.Interval.High, 4), speed.Squares)
        : null;
}

/// <summary>Speed of the arrival surface away from the origin in a part.</summary>
/// <param name="Kind">decade or region.</param>
/// <param name="Name">Such as 2010s, or the region's name.</param>
/// <param name="KmPerYear">Speed.</param>
/// <param name="Low">Lower end of the 95 % interval.</param>
/// <param name="High">Upper end.</param>
/// <param name="N">Number of squares.</param>
internal sealed record SpeedPartJson([property: Words("decade", "region")] string Kind, string Name, double KmPerYear, double Low, double High, int N);
