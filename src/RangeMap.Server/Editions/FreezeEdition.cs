using System.Globalization;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Freezes the live state: from then on it can be asked for, and cited, whatever is imported later.</summary>
internal static class FreezeEdition
{
    private const SquareSize CountedSquares = SquareSize.Km10;

    /// <summary>Freezes the state of a data folder as the public sees it, sensitive places generalised.</summary>
    /// <returns>The edition, and whether it is new: equal data are the same edition, which stays as it was first described.</returns>
    public static (FrozenEdition Edition, bool IsNew) Run(DataFolder folder, DataSnapshot data, string? title, string? reason, DateTimeOffset now)
    {
        var settings = new Settings(folder.Database);
        var name = string.IsNullOrWhiteSpace(title) ? settings.Read(SettingNames.Title) ?? "RangeMap" : title.Trim();
        var content = FrozenState.ContentOf(data);
        return new FrozenEditions(folder.Path).Keep(content, id => Describe(id, name, folder, data, now) with { Reason = string.IsNullOrWhiteSpace(reason) ? null : reason.Trim() });
    }

    private static FrozenEdition Describe(string id, string title, DataFolder folder, DataSnapshot data, DateTimeOffset now)
    {
        var own = data.Taxa.Select(data.Own).ToList();
        var squares = own.SelectMany(cube => SquaresOf(cube)).Distinct().Count();
        var effort = data.EffortOfAll(CountedSquares);
        var always = new Period(int.MinValue, int.MaxValue, "../..");
        var frozenAt = now.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
        return new(
            id, title, frozenAt, data.Edition.Number, data.Edition.MadeAt, own.Count(cube => cube.Cells.Length > 0), own.Sum(RecordsIn), squares,
            effort.Squares.Sum(square => (long)effort.Visits(square, always)), new Settings(folder.Database).Read(SettingNames.Demo) is not null,
            LicenceMix.Of(folder.Database), CitationText.Of(title, frozenAt, id));
    }

    private static long RecordsIn(TaxonCube cube)
    {
        long records = 0;
        foreach (ref readonly var cell in cube.Cells)
            records += cell.Counts.All;
        return records;
    }

    private static HashSet<long> SquaresOf(TaxonCube cube)
    {
        var squares = new HashSet<long>();
        foreach (ref readonly var cell in cube.Cells)
        {
            if (Square.FromCode(cell.SquareCode).TryCoarsen(CountedSquares, out var square))
                squares.Add(square.Code);
        }

        return squares;
    }
}
