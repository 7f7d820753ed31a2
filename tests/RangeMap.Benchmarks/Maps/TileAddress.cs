using RangeMap.Grids;
using RangeMap.Server;

namespace RangeMap.Benchmarks;

/// <summary>A tile of a taxon's map.</summary>
/// <param name="TaxonId">The taxon.</param>
/// <param name="Zoom">The level.</param>
/// <param name="Row">From the north.</param>
/// <param name="Column">From the west.</param>
internal sealed record TileAddress(string TaxonId, int Zoom, int Row, int Column)
{
    public const string Periods = "../1999,2000/2009,2010/..";

    public static TileMatrixSet Set => TileMatrixSet.BritishNationalGrid;

    /// <summary>The tiles of all taxa at levels that a person looks at, those that lie over the land.</summary>
    public static IReadOnlyList<TileAddress> All(DataSnapshot data, int taxa)
    {
        var tiles =
            from taxon in data.Taxa.Where(taxon => data.Cube(taxon).Cells.Length > 0).Take(taxa)
            from zoom in Enumerable.Range(0, 6)
            from row in Enumerable.Range(0, 1 << zoom)
            from column in Enumerable.Range(0, 1 << zoom)
            where Set.Contains(zoom, column, row)
            select new TileAddress(taxon.Id, zoom, row, column);
        return [.. tiles.Where(tile => tile.Draw(data).Length > 0)];
    }

    public byte[] Draw(DataSnapshot data) =>
        DrawTile.Answer(data, PresenceQuestion.Of(data, TaxonId, "10km", Periods, null), Set, Zoom, Row, Column).Bytes;

    public string Url => $"/api/v1/taxa/{Uri.EscapeDataString(TaxonId)}/tiles/{Set.Id}/{Zoom}/{Row}/{Column}?grid=10km&periods={Uri.EscapeDataString(Periods)}";
}
