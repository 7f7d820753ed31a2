namespace RangeMap.Store;

internal static class CubeSql
{
    public const string SegmentsOfTaxon = "SELECT data FROM cube_segment WHERE taxon = @Taxon ORDER BY id";

    public const string SegmentsOfAll = "SELECT taxon, data FROM cube_segment ORDER BY taxon, id";

    public const string VisitSegments = "SELECT data FROM visit_segment ORDER BY id";

    public const string AddSegment = "INSERT INTO cube_segment (taxon, cells, data) VALUES (@Taxon, @Cells, @Data)";

    public const string AddVisits = "INSERT INTO visit_segment (entries, data) VALUES (@Entries, @Data)";

    public const string TaxaWithManySegments = "SELECT taxon FROM cube_segment GROUP BY taxon HAVING COUNT(*) > @MostSegments";

    public const string CountVisitSegments = "SELECT COUNT(*) FROM visit_segment";

    public const string RemoveSegments = "DELETE FROM cube_segment WHERE taxon = @Taxon";

    public const string RemoveVisits = "DELETE FROM visit_segment";
}
