using System.Globalization;
using RangeMap.Maps;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>The parts of a question about an export, as they stand in an address or on the command line.</summary>
internal sealed record ExportParts
{
    public string? Taxon { get; init; }

    public string? Group { get; init; }

    public string? Grid { get; init; }

    public string? From { get; init; }

    public string? To { get; init; }

    public string? Quality { get; init; }

    public string? Region { get; init; }

    public string? Bbox { get; init; }
}

/// <summary>Reads a question about an export.</summary>
internal static class ExportAsk
{
    /// <summary>The question.</summary>
    /// <exception cref="UserException">A part cannot be read.</exception>
    public static ExportQuestion Read(DataSnapshot data, ExportTable table, ExportParts parts, bool inFull = false)
    {
        if (table == ExportTables.Records && data.FrozenId is not null)
            throw new UserException("A frozen edition holds squares, not single records.", "edition", "Ask for its presence or effort, or leave edition out.") { IsArgument = true };
        var (from, to) = (Day(parts.From, "from", first: true), Day(parts.To, "to", first: false));
        if (from > to)
            throw new UserException("The first day comes after the last.", "from", "Exchange from and to.") { IsArgument = true };
        return new(data, table, Taxa(data, parts), Ask.Size(parts.Grid), from, to, Ask.Quality(parts.Quality), KnownRegions.Of(data).Find(parts.Region), Box(parts.Bbox), inFull);
    }

    /// <summary>A format that a table comes in; CSV where none is named.</summary>
    /// <exception cref="UserException">There is no such format, or the table does not come in it.</exception>
    public static ExportFormat Format(string? word, ExportTable table)
    {
        var format = string.IsNullOrEmpty(word) ? ExportFormat.Csv : ExportFormats.Find(word)
            ?? throw new UserException($"'{word}' is no format of exports.", "format", $"Use one of {string.Join(", ", ExportFormats.Words)}.") { IsArgument = true };
        return format != ExportFormat.DarwinCoreArchive || table == ExportTables.Records ? format
            : throw new UserException("A Darwin Core Archive holds single records, not squares.", "format", "Ask for records, or use csv, geojson, gpkg or parquet.") { IsArgument = true };
    }

    /// <summary>A box in degrees: west, south, east, north; with six numbers, heights stand third and sixth and do not matter.</summary>
    /// <exception cref="UserException">The text is no box.</exception>
    public static DegreeBox? Box(string? text)
    {
        if (string.IsNullOrEmpty(text))
            return null;
        var numbers = text.Split(',').Select(part => double.TryParse(part, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : double.NaN).ToArray();
        if (numbers is [var a, var b, _, var c, var d, _])
            numbers = numbers.Any(double.IsNaN) ? [] : [a, b, c, d];
        if (numbers is not [var west, var south, var east, var north] || numbers.Any(double.IsNaN))
            throw BadBox($"'{text}' is no box.");
        if (Math.Abs(west) > 180 || Math.Abs(east) > 180 || Math.Abs(south) > 90 || Math.Abs(north) > 90)
            throw BadBox("The box lies beyond 180 degrees of longitude or 90 of latitude.");
        return south > north ? throw BadBox("The southern edge lies north of the northern.") : new(west, south, east, north);
    }

    private static UserException BadBox(string what) =>
        new(what, "bbox", "Write four numbers with commas between them, degrees: west,south,east,north, such as -3.5,54,-1,56. A west beyond the east goes across the 180th meridian.") { IsArgument = true };

    private static List<Taxon> Taxa(DataSnapshot data, ExportParts parts)
    {
        IEnumerable<Taxon> taxa = string.IsNullOrWhiteSpace(parts.Taxon) ? data.Taxa : parts.Taxon.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(data.Find).Distinct();
        if (!string.IsNullOrWhiteSpace(parts.Group))
        {
            if (!data.Taxa.Any(taxon => InGroup(taxon, parts.Group)))
                throw new UserException($"There is no group '{parts.Group}'.", "group", $"Name one of: {string.Join(", ", data.Taxa.Select(taxon => taxon.Group).OfType<string>().Distinct().Order(StringComparer.Ordinal))}.") { IsArgument = true };
            taxa = taxa.Where(taxon => InGroup(taxon, parts.Group));
        }

        return [.. taxa.OrderBy(taxon => taxon.Number)];
    }

    private static bool InGroup(Taxon taxon, string group) => string.Equals(taxon.Group, group.Trim(), StringComparison.OrdinalIgnoreCase);

    /// <summary>A year or a day.</summary>
    private static DateOnly? Day(string? text, string where, bool first)
    {
        if (string.IsNullOrEmpty(text))
            return null;
        if (text.Length == 4 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var year) && year > 0)
            return first ? new(year, 1, 1) : new(year, 12, 31);
        return DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : throw new UserException($"'{text}' is no year or day.", where, "Write a year such as 2005, or a day such as 2005-06-30.") { IsArgument = true };
    }
}
