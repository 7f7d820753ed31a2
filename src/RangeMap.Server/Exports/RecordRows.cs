using System.Globalization;
using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>The rows of exports of single records, in the order in which they came; the same rule as for looking at records decides what is shown.</summary>
internal static class RecordRows
{
    /// <summary>The question to the store: rejected records are left out, and for the public those of sensitive species.</summary>
    public static RecordQuery QueryOf(ExportQuestion question)
    {
        var sensitive = question.Data.Taxa.Where(taxon => taxon.GeneraliseTo is not null).Select(taxon => taxon.Number).ToList();
        return new()
        {
            Taxa = question.OfAll ? null : [.. question.Taxa.SelectMany(question.Data.WithMembers).Select(taxon => taxon.Number).Distinct()],
            WithoutTaxa = question.InFull || sensitive.Count == 0 ? null : sensitive,
            WithoutStatus = ReviewStatus.Rejected,
            From = question.From,
            To = question.To,
        };
    }

    /// <summary>True when rows are chosen by more than the store looks at.</summary>
    public static bool IsChosenFurther(ExportQuestion question) => question.Quality != Quality.All || question.Region is not null || question.Box is not null;

    /// <summary>The rows.</summary>
    public static IEnumerable<ExportRow> Of(DataFolder folder, ExportQuestion question) => Of(question, new RecordStore(folder.Database).All(QueryOf(question)));

    /// <summary>One record by its name; null where there is none for the one who asks.</summary>
    public static ExportRow? One(DataFolder folder, ExportQuestion question, string name)
    {
        if (!RecordId.TryParse(name, out var id) || new RecordStore(folder.Database).Read(id) is not { } record || record.ReviewStatus == ReviewStatus.Rejected)
            return null;
        var hidden = QueryOf(question).WithoutTaxa;
        return hidden?.Contains((int)record.Taxon) == true ? null : Of(question, [record]).FirstOrDefault();
    }

    private static IEnumerable<ExportRow> Of(ExportQuestion question, IEnumerable<StoredRecord> records)
    {
        var row = new ExportRow(ExportTables.Records.Columns.Count);
        foreach (var record in records)
        {
            if (CubeFold.Count(record.ReviewStatus, record.Doubts).At(question.Quality) == 0 || question.Region?.Holds(record.Square) == false)
                continue;
            row.Point = PointOf(record);
            if (question.Box is { } box && !box.Intersects(new(row.Point.Longitude, row.Point.Latitude, row.Point.Longitude, row.Point.Latitude)))
                continue;
            Fill(row, question, record);
            yield return row;
        }
    }

    private static LatLon PointOf(StoredRecord record)
    {
        var point = record is { Latitude: { } latitude, Longitude: { } longitude } ? new(latitude, longitude) : NationalGrid.Get(record.Square.Grid).ToLatLon(record.Square.Centre);
        return new(Math.Round(point.Latitude, 6), Math.Round(point.Longitude, 6));
    }

    private static void Fill(ExportRow row, ExportQuestion question, StoredRecord record)
    {
        var taxon = question.Data.Taxon((int)record.Taxon);
        row.Square = record.Square;
        var cells = new CellWriter(row);
        cells.Add(ExportValue.Of(record.Id.ToString()));
        cells.Add(ExportValue.Of(record.Dataset));
        cells.Add(ExportValue.Of("HumanObservation"));
        cells.Add(ExportValue.Of(record.Present ? "present" : "absent"));
        cells.Add(ExportValue.Of(taxon.Id));
        cells.Add(ExportValue.Of(taxon.ScientificName));
        cells.Add(ExportValue.Of(taxon.Rank));
        cells.Add(ExportValue.Of(Days(record.Dates)));
        cells.Add(ExportValue.Of(record.Square.ToString()));
        cells.Add(ExportValue.Of(NationalGrid.Get(record.Square.Grid).Code));
        cells.Add(ExportValue.Of(row.Point.Latitude));
        cells.Add(ExportValue.Of(row.Point.Longitude));
        cells.Add(ExportValue.Of("EPSG:4326"));
        cells.Add(ExportValue.Of(record.Uncertainty ?? YearCube.HalfDiagonal(record.Square)));
        cells.Add(ExportValue.Of(RecordJson.Word(record.ReviewStatus)));
        FillDetails(ref cells, question.InFull, record);
    }

    private static void FillDetails(ref CellWriter cells, bool inFull, StoredRecord record)
    {
        cells.Add(ExportValue.Of(inFull ? record.Recorder : null));
        cells.Add(ExportValue.Of(inFull ? record.Determiner : null));
        cells.Add(ExportValue.Of(record.Stage));
        cells.Add(ExportValue.Of(record.Sex));
        cells.Add(ExportValue.Of(record.Individuals));
        cells.Add(ExportValue.Of(record.LengthMm));
        cells.Add(ExportValue.Of(record.Evidence));
        cells.Add(ExportValue.Of(record.Host));
        cells.Add(ExportValue.Of(record.Behaviour));
        cells.Add(ExportValue.Of(inFull ? record.Site : null));
        cells.Add(ExportValue.Of(record.OnCompleteList));
    }

    private static string Days(DayRange days)
    {
        var first = days.First.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return days.IsOneDay ? first : $"{first}/{days.Last.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}";
    }
}
