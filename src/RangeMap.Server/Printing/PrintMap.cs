using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Prints maps: over HTTP and on the command line alike.</summary>
internal static class PrintMap
{
    private const int MostNameSigns = 80;

    /// <summary>A map as a file.</summary>
    /// <exception cref="UserException">The map has more classes than can be told apart.</exception>
    public static byte[] Answer(DataSnapshot data, DataFolder folder, PrintQuestion question, PrintFormat format) =>
        MapPrinter.Print(Map(data, folder, question), BaseGeography.Map, format, question.Size, question.Ink);

    /// <summary>A name for the file of a map, of signs that every file system takes.</summary>
    public static string FileName(PrintQuestion question, PrintFormat format)
    {
        var safe = string.Concat(question.Taxon.Id.Take(MostNameSigns).Select(sign => char.IsAsciiLetterOrDigit(sign) || sign is '-' or '_' ? sign : '-')).Trim('-');
        return $"{(safe.Length == 0 ? "map" : safe)}-{question.Kind.ToString().ToLowerInvariant()}.{format.ToString().ToLowerInvariant()}";
    }

    internal static PrintedMap Map(DataSnapshot data, DataFolder folder, PrintQuestion question)
    {
        var content = GatherContent.Of(data, question);
        var area = AreaOf(question, content);
        return new()
        {
            Name = TaxonNameParts.Of(question.Taxon),
            VernacularName = string.IsNullOrWhiteSpace(question.Taxon.VernacularName) ? null : question.Taxon.VernacularName,
            Subject = question.Region is { } region ? $"{region.Name}. {content.Subject}" : content.Subject,
            Area = area,
            Side = question.Grid,
            LegendTitle = content.LegendTitle,
            Classes = content.Classes,
            Squares = [.. content.Squares.Where(square => area.Shows(square.Square))],
            Fronts = content.Fronts,
            Source = SourceLines.Of(data, folder, question, content, area),
            Publisher = SourceLines.Publisher(folder),
            EditionMadeAt = SourceLines.MadeAt(data) ?? DateTimeOffset.UnixEpoch,
        };
    }

    /// <summary>The region; else the islands; else, for data from elsewhere, wherever the squares lie.</summary>
    private static MapArea AreaOf(PrintQuestion question, MapContent content)
    {
        if (question.Region is { } region)
            return MapArea.Of(region.Name, region.Polygons, content.Squares.Select(square => square.Square));
        var islands = MapArea.Islands;
        return content.Squares.Count == 0 || content.Squares.Any(square => islands.Shows(square.Square)) ? islands : MapArea.Around([.. content.Squares.Select(square => square.Square)]);
    }
}
