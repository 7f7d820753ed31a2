using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>The fronts of spreading taxa as rows, taxa by number, years in order.</summary>
internal static class FrontRows
{
    private static readonly int LeastSquares = new ArrivalOptions().LeastSquares;

    /// <summary>The rows. A model is fitted when its taxon's turn comes, and kept.</summary>
    public static IEnumerable<ExportRow> Of(DataFolder _, ExportQuestion question)
    {
        var row = new ExportRow(ExportTables.Fronts.Columns.Count);
        foreach (var taxon in question.Taxa.Where(taxon => MaySpread(question, taxon)))
        {
            var (fronts, now) = DrawFronts.OfEveryYear(question.Data, taxon, question.Size, question.Span);
            foreach (var front in fronts.Where(front => front.Lines.Count > 0 && Touches(question.Box, front)))
            {
                row.Lines = front.Lines;
                var cells = new CellWriter(row);
                cells.Add(ExportValue.Of(taxon.Id));
                cells.Add(ExportValue.Of(taxon.ScientificName));
                cells.Add(ExportValue.Of(question.Size.ToText()));
                cells.Add(ExportValue.Of(front.Year));
                cells.Add(ExportValue.Of(front.Year > now));
                yield return row;
            }
        }
    }

    /// <summary>The model refuses taxa with fewer squares; most of a list are told so here without their visits being gathered.</summary>
    private static bool MaySpread(ExportQuestion question, Taxon taxon) =>
        AnswerPresence.Arrivals(question.Data, taxon, question.Size, Presence.Quality.All).Count >= LeastSquares;

    /// <summary>True when a step of a line may cross the box; steps are no longer than a square.</summary>
    private static bool Touches(DegreeBox? box, FrontOfYear front) =>
        box is not { } asked || front.Lines.Any(line => line.Zip(line.Skip(1), Around).Any(step => asked.Intersects(step)));

    private static DegreeBox Around(LatLon a, LatLon b) =>
        new(Math.Min(a.Longitude, b.Longitude), Math.Min(a.Latitude, b.Latitude), Math.Max(a.Longitude, b.Longitude), Math.Max(a.Latitude, b.Latitude));
}
