using RangeMap.Grids;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Names of downloads: only letters, digits, points and hyphens, so that no name can lead elsewhere or need quotes.</summary>
internal static class FileNames
{
    private const int LongestPart = 60;

    /// <summary>The name of an export.</summary>
    public static string Of(ExportQuestion question, ExportFormat format) => Of(question.Table.Name, question.Taxa, question.OfAll, question.Table.Geometry == ExportGeometry.Square ? question.Size : null, question.Data) + format.Ending();

    /// <summary>A name without its ending.</summary>
    public static string Of(string what, IReadOnlyList<Records.Taxon> taxa, bool ofAll, SquareSize? size, DataSnapshot data)
    {
        var of = ofAll ? "all" : taxa is [var only] ? only.Id : FormattableString.Invariant($"{taxa.Count}-taxa");
        var state = data.FrozenId is { } id ? $"edition-{id[..12]}" : $"live-{data.StateName}";
        return string.Join('-', new[] { what, Safe(of), size?.ToText(), state }.OfType<string>());
    }

    private static string Safe(string text)
    {
        var safe = string.Concat(text.Take(LongestPart).Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-')).Trim('-');
        return safe.Length == 0 ? "taxon" : safe;
    }
}
