using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>The rows of a presence map, as in its CSV form: squares ascending by code, periods in the order asked, those without records left out.</summary>
public static class PresenceMapRows
{
    /// <summary>The rows; one object is handed out again and again.</summary>
    public static IEnumerable<ExportRow> Of(PresenceMap map, string taxon)
    {
        var row = new ExportRow(ExportTables.PresenceMap.Columns.Count);
        var (size, quality) = (map.Size.ToText(), QualityText.Of(map.Quality));
        foreach (var square in map.Squares)
        {
            row.Square = square.Square;
            var (name, grid) = (square.Square.ToString(), NationalGrid.Get(square.Square.Grid).Code);
            for (var i = 0; i < map.Periods.Count; i++)
            {
                if (square.PerPeriod[i] is not { Records: > 0 } count)
                    continue;
                ReadOnlySpan<ExportValue> cells =
                [
                    ExportValue.Of(taxon), ExportValue.Of(name), ExportValue.Of(grid), ExportValue.Of(size), ExportValue.Of(map.Periods[i].Text), ExportValue.Of(count.Records),
                    ExportValue.Of(count.Visits), ExportValue.Of(count.FirstYear), ExportValue.Of(count.LastYear), ExportValue.Of(quality),
                ];
                cells.CopyTo(row.Values);
                yield return row;
            }
        }
    }
}
