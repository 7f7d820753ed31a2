using System.Globalization;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Finds the features of a collection. Everyone sees the same here, which is what the public may see.</summary>
internal static class OgcItems
{
    /// <summary>The rows of a question, without its limit and offset.</summary>
    public static IEnumerable<ExportRow> Find(DataFolder folder, DataSnapshot data, OgcCollection collection, OgcQuery query)
    {
        if (Question(folder, data, collection, query) is not { } question)
            return [];
        var filters = query.Filters.Select(filter => (Column: collection.ColumnOf(filter.Key), filter.Value)).ToArray();
        return collection.Rows(folder, question).Where(row => Array.TrueForAll(filters, filter => collection.TextOf(row, filter.Column) == filter.Value) && Meets(collection, row, query));
    }

    /// <summary>One feature by its identifier; null where there is none.</summary>
    public static ExportRow? One(DataFolder folder, DataSnapshot data, OgcCollection collection, string id)
    {
        var parts = id.Split(OgcCollection.Between);
        var keys = collection.Table.Key;
        if (parts.Length < keys.Count)
            return null;
        // An identifier of the taxon list may itself hold the sign; those after it never do.
        var first = string.Join(OgcCollection.Between, parts[..^(keys.Count - 1)]);
        var values = (string[])[first, .. parts[^(keys.Count - 1)..]];
        if (keys.Count == 1)
            values = [id];
        if (collection.Table == ExportTables.Records)
            return RecordRows.One(folder, ExportAsk.Read(data, collection.Table, new() { Quality = "all" }), id);
        var filters = keys.Zip(values).ToDictionary(pair => pair.First, pair => pair.Second);
        return Find(folder, data, collection, new(1, 0, null, null, filters)).FirstOrDefault();
    }

    /// <summary>True where all features can be counted at once: those of one taxon, and of tables with a row a square.</summary>
    public static bool CanCount(OgcCollection collection, OgcQuery query) =>
        collection.Table == ExportTables.Squares || (collection.Table != ExportTables.Records && query.Filters.ContainsKey("taxonID"));

    /// <summary>The question to the table; what its parts choose need not be looked at row by row. Null where a filter names what is not there.</summary>
    private static ExportQuestion? Question(DataFolder folder, DataSnapshot data, OgcCollection collection, OgcQuery query)
    {
        string? Filter(string name) => query.Filters.GetValueOrDefault(name);
        var taxa = data.Taxa.Where(taxon => Filter("taxonID") is not { } id || taxon.Id == id).Where(taxon => Filter("scientificName") is not { } name || taxon.ScientificName == name).Where(taxon => Filter("group") is not { } group || taxon.Group == group).ToList();
        var year = Filter("year") is { Length: 4 } text && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0 ? number : default(int?);
        var size = Filter("size") ?? SizeOf(Filter("square"));
        if (taxa.Count == 0 || (size is not null && !Grids.SquareSizeText.TryParse(size, out _)))
            return null;
        var parts = new ExportParts { Grid = size, Quality = collection.Table == ExportTables.Records ? "all" : null };
        var asked = ExportAsk.Read(data, collection.Table, parts) with { Taxa = taxa, Box = query.Box };
        if (collection.Table == ExportTables.Fronts && query.Days is { } days)
            asked = asked with { From = days.First, To = days.Last };
        return year is { } only && collection.Table != ExportTables.Arrivals ? asked with { From = new(only, 1, 1), To = new(only, 12, 31) } : asked;
    }

    /// <summary>Where a square is named, its size is meant.</summary>
    private static string? SizeOf(string? square) =>
        square is not null && Grids.GridReference.TryParse(square, default, out var found, out _) && MapSizes.All.Contains(found.Size) ? Grids.SquareSizeText.ToText(found.Size) : null;

    private static bool Meets(OgcCollection collection, ExportRow row, OgcQuery query)
    {
        if (query.Days is not { } days)
            return true;
        var (first, last) = collection.DaysOf(row);
        return first <= days.Last && last >= days.First;
    }
}
