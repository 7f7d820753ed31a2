using System.Globalization;
using nietras.SeparatedValues;
using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>Towns by name, from gis-data/places.</summary>
public sealed class Gazetteer
{
    private readonly Lazy<List<TownPlace>> _towns = new(Read);

    /// <summary>Towns in whose name a word starts as typed, the largest first.</summary>
    public IEnumerable<TownPlace> Find(string typed) => _towns.Value.Where(town => Starts(town.Name, typed)).OrderByDescending(town => town.Population);

    /// <summary>All towns, the largest first.</summary>
    public IReadOnlyList<TownPlace> Towns => _towns.Value;

    private static bool Starts(string name, string typed)
    {
        const CompareOptions Loosely = CompareOptions.IgnoreCase | CompareOptions.IgnoreNonSpace;
        var compare = CultureInfo.InvariantCulture.CompareInfo;
        return compare.IsPrefix(name, typed, Loosely) || name.Split(' ', '-').Any(word => compare.IsPrefix(word, typed, Loosely));
    }

    private static List<TownPlace> Read()
    {
        using var stream = BaseData.Open("places.csv");
        using var rows = Sep.Reader(options => options with { Unescape = true }).From(stream);
        var towns = new List<TownPlace>();
        foreach (var row in rows)
        {
            var place = new LatLon(row["latitude"].Parse<double>(), row["longitude"].Parse<double>());
            towns.Add(new(row["name"].ToString(), row["country"].ToString(), place, row["population"].TryParse<int>() ?? 0));
        }

        return [.. towns.OrderByDescending(town => town.Population)];
    }
}

/// <summary>A town.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Country">Two letters, ISO 3166-1.</param>
/// <param name="Place">Where it is.</param>
/// <param name="Population">People; 0 where not known.</param>
public sealed record TownPlace(string Name, string Country, LatLon Place, int Population);
