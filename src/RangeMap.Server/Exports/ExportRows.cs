using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>The rows of exports of squares. One row object is handed out again and again, and one taxon stands in memory at a time.</summary>
internal static class ExportRows
{
    /// <summary>The occurrence cube: taxon by square by year, taxa by number, squares by code.</summary>
    public static IEnumerable<ExportRow> Presence(DataFolder _, ExportQuestion question)
    {
        var row = new ExportRow(ExportTables.Presence.Columns.Count);
        var place = new PlaceCells(question);
        foreach (var taxon in question.Taxa)
        {
            var cube = YearCube.Of(question.Data.Cube(taxon), question.Size, question.Quality, question.Span);
            if (cube.Cells.Count == 0)
                continue;
            var effort = question.Data.Effort(taxon, question.Size);
            var aggregate = question.Data.Members(taxon).Any();
            foreach (var cell in cube.Cells.Where(cell => place.Wanted(cell.Square)))
            {
                Fill(row, taxon, aggregate, cell, effort, place);
                yield return row;
            }
        }
    }

    /// <summary>Recording effort: group by square by year.</summary>
    public static IEnumerable<ExportRow> Effort(DataFolder _, ExportQuestion question)
    {
        var row = new ExportRow(ExportTables.Effort.Columns.Count);
        var place = new PlaceCells(question);
        foreach (var taxon in question.Taxa.DistinctBy(taxon => taxon.Group).OrderBy(taxon => taxon.Group, StringComparer.Ordinal))
        {
            var effort = question.Data.Effort(taxon, question.Size);
            foreach (var square in effort.Squares.Where(place.Wanted).Order())
            {
                foreach (var (year, visits) in ByYear(effort, square, question.Span))
                {
                    var cells = new CellWriter(row);
                    cells.Add(ExportValue.Of(taxon.Group));
                    place.Add(ref cells, square);
                    cells.Add(ExportValue.Of(year));
                    cells.Add(ExportValue.Of(visits.Count));
                    cells.Add(ExportValue.Of(visits.Count(visit => visit.Complete)));
                    cells.Add(ExportValue.Of(Math.Round(visits.Average(visit => visit.ListLength), 3)));
                    yield return row;
                }
            }
        }
    }

    private static IEnumerable<(int Year, List<Visit> Visits)> ByYear(Effort effort, Square square, Period span) =>
        effort.In(square, span).ToArray().GroupBy(visit => DateOnly.FromDayNumber(visit.Day).Year).Select(year => (year.Key, year.ToList()));

    private static void Fill(ExportRow row, Taxon taxon, bool aggregate, in YearCell cell, Effort effort, PlaceCells place)
    {
        var cells = new CellWriter(row);
        cells.Add(ExportValue.Of(taxon.Id));
        cells.Add(ExportValue.Of(taxon.ScientificName));
        cells.Add(ExportValue.Of(taxon.Rank));
        cells.Add(ExportValue.Of(aggregate));
        place.Add(ref cells, cell.Square);
        cells.Add(ExportValue.Of(cell.Year));
        cells.Add(ExportValue.Of(cell.Records));
        cells.Add(ExportValue.Of(cell.Confirmed));
        cells.Add(ExportValue.Of(effort.Visits(cell.Square, PlaceCells.YearOf(cell.Year))));
        cells.Add(ExportValue.Of(cell.LeastUncertaintyMetres));
        cells.Add(ExportValue.Of(DateOnly.FromDayNumber(cell.FirstDay)));
        cells.Add(ExportValue.Of(DateOnly.FromDayNumber(cell.LastDay)));
    }
}

/// <summary>Writes the cells of a row one after the other.</summary>
internal struct CellWriter(ExportRow row)
{
    private int _next;

    public ExportRow Row { get; } = row;

    public void Add(ExportValue value) => Row.Values[_next++] = value;
}
