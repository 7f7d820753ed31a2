using System.Globalization;
using System.Text;
using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Store;

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
        var areas = data.Answers.GetOrMake("named areas", () => data.Regions.Aggregate(BaseGeography.Nations, (all, region) => all.With(Read(region))));
        var regions = areas.Names.Select(name => Part(fit, "region", name, [.. reached.Where(i => areas.Covers(name, fitted.Squares[i]) == true)]));
        return [.. decades.Concat(regions).OfType<SpeedPartJson>()];
    }

    private static SpeedPartJson? Part(ArrivalFit fit, string kind, string name, List<int> squares) => RadialSpeed.Of(fit, squares) is { } speed
        ? new(kind, name, Math.Round(speed.KmPerYear, 4), Math.Round(speed.Interval.Low, 4), Math.Round(speed.Interval.High, 4), speed.Squares)
        : null;

    private static NamedAreas Read(StoredRegion region) => NamedAreas.Read(new MemoryStream(Encoding.UTF8.GetBytes(region.GeoJson)), RegionStore.NameProperty);
}

/// <summary>Speed of the arrival surface away from the origin in a part.</summary>
/// <param name="Kind">decade or region.</param>
/// <param name="Name">Such as 2010s, or the region's name.</param>
/// <param name="KmPerYear">Speed.</param>
/// <param name="Low">Lower end of the 95 % interval.</param>
/// <param name="High">Upper end.</param>
/// <param name="N">Number of squares.</param>
internal sealed record SpeedPartJson(string Kind, string Name, double KmPerYear, double Low, double High, int N);
