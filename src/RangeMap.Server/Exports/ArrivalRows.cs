using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;

namespace RangeMap.Server;

/// <summary>The rows of first arrivals, and of all squares with records.</summary>
internal static class ArrivalRows
{
    /// <summary>First arrivals: taxa by number, squares by code.</summary>
    public static IEnumerable<ExportRow> Arrivals(DataFolder _, ExportQuestion question)
    {
        var row = new ExportRow(ExportTables.Arrivals.Columns.Count);
        var place = new PlaceCells(question);
        foreach (var taxon in question.Taxa)
        {
            foreach (var arrival in AnswerPresence.Arrivals(question.Data, taxon, question.Size, question.Quality).Where(arrival => place.Wanted(arrival.Square)).OrderBy(arrival => arrival.Square.Code))
            {
                var cells = new CellWriter(row);
                cells.Add(ExportValue.Of(taxon.Id));
                cells.Add(ExportValue.Of(taxon.ScientificName));
                place.Add(ref cells, arrival.Square);
                cells.Add(ExportValue.Of(arrival.Year));
                yield return row;
            }
        }
    }

    /// <summary>Squares with records of any taxon, by code.</summary>
    public static IEnumerable<ExportRow> Squares(DataFolder _, ExportQuestion question)
    {
        var row = new ExportRow(ExportTables.Squares.Columns.Count);
        var place = new PlaceCells(question);
        foreach (var square in OfAll(question.Data, question.Size, question.Quality).Squares.Where(square => place.Wanted(square.Square)))
        {
            var cells = new CellWriter(row);
            place.Add(ref cells, square.Square);
            cells.Add(ExportValue.Of(square.PerPeriod[0].Records));
            cells.Add(ExportValue.Of(square.PerPeriod[0].Visits));
            cells.Add(ExportValue.Of(square.FirstYear));
            cells.Add(ExportValue.Of(square.LastYear));
            yield return row;
        }
    }

    /// <summary>The presence map of all taxa together, each record counted once.</summary>
    public static PresenceMap OfAll(DataSnapshot data, SquareSize size, Quality quality) => data.Answers.GetOrMake(("all taxa", size, quality), () => PresenceFold.Fold(
        SizedCube.Of(TaxonCube.Sum([TaxonCube.Empty, .. data.Taxa.Select(data.Own)]), size), Ask.Periods(null), quality, data.EffortOfAll(size)));
}
