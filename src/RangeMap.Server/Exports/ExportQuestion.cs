using System.Globalization;
using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>What an export is of; what is null does not matter.</summary>
/// <param name="Data">The state of the data.</param>
/// <param name="Table">The table.</param>
/// <param name="Taxa">The taxa, by number.</param>
/// <param name="Size">Side of the squares; of no matter for records.</param>
/// <param name="From">First day.</param>
/// <param name="To">Last day.</param>
/// <param name="Quality">Which records count.</param>
/// <param name="Region">Region that reaches into the squares.</param>
/// <param name="Box">Box that squares or points touch.</param>
/// <param name="InFull">True for those who may see records of sensitive species and people's names.</param>
internal sealed record ExportQuestion(
    DataSnapshot Data, ExportTable Table, IReadOnlyList<Taxon> Taxa, SquareSize Size, DateOnly? From, DateOnly? To, Quality Quality, NamedRegion? Region, DegreeBox? Box, bool InFull)
{
    /// <summary>True when every taxon is asked for.</summary>
    public bool OfAll => Taxa.Count == Data.Taxa.Count;

    /// <summary>The days asked.</summary>
    public Period Span => new(From?.DayNumber ?? int.MinValue, To is { } last ? last.DayNumber + 1 : int.MaxValue, $"{Day(From)}/{Day(To)}");

    /// <summary>What was asked, by name, for readers of the file.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Words()
    {
        var words = new List<KeyValuePair<string, string>> { new("what", Table.Name), new("taxa", OfAll ? "all" : string.Join(", ", Taxa.Select(taxon => taxon.Id))) };
        if (Table.Geometry == ExportGeometry.Square)
            words.Add(new("grid", Size.ToText()));
        words.AddRange([new("days", Span.Text), new("quality", Quality.ToString().ToUpperInvariant() switch { "CONFIRMED" => "confirmed", "ALL" => "all", _ => "usable" })]);
        if (Region is not null)
            words.Add(new("region", Region.Name));
        if (Box is { } box)
            words.Add(new("bbox", string.Create(CultureInfo.InvariantCulture, $"{box.West},{box.South},{box.East},{box.North}")));
        words.Add(new("sensitive places", Table.Geometry == ExportGeometry.Square ? "generalised" : InFull ? "in full: not for publication" : "left out"));
        return words;
    }

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "..";
}
