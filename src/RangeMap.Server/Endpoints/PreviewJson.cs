using System.Globalization;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>How a file would be read.</summary>
/// <param name="Form">What the file is, in words.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Terms">What a column can mean.</param>
/// <param name="Rows">The first rows.</param>
/// <param name="Counts">What would become of the first thousand rows.</param>
/// <param name="DateOrder">notStated, dmy or mdy, as stated.</param>
/// <param name="Problem">Why the file cannot be imported yet; null when it can.</param>
internal sealed record PreviewJson(
    string Form, IReadOnlyList<PreviewColumnJson> Columns, IReadOnlyList<TermJson> Terms, IReadOnlyList<PreviewRowJson> Rows, PreviewCountsJson Counts, [property: Words("notStated", "dmy", "mdy")] string DateOrder,
    ImportProblem? Problem)
{
    public static PreviewJson Of(ImportPreview preview, ImportStatements stated)
    {
        var report = preview.Mapping.Report;
        var columns = preview.File.Columns.Select((name, i) => new PreviewColumnJson(
            name, i < preview.Mapping.Columns.Count && preview.Mapping.TermOf(i) is { } term ? TermNames.Name(term) : null, report.GetValueOrDefault(name, "kept, not used"),
            preview.File.SamplesOf(i)));
        var order = stated.DateOrder != Records.DateOrder.NotStated ? stated.DateOrder : stated.Mapping?.DateOrder ?? Records.DateOrder.NotStated;
        return new(
            preview.File.File.Words, [.. columns], [.. Enum.GetValues<Term>().Select(term => new TermJson(TermNames.Name(term), TermWords.Of(term)))],
            [.. preview.Rows.Select(PreviewRowJson.Of)], new(preview.Counts.Read, preview.Counts.Accepted, preview.Counts.Refused),
            order switch { Records.DateOrder.DayFirst => "dmy", Records.DateOrder.MonthFirst => "mdy", _ => "notStated" },
            preview.Problem);
    }
}

/// <summary>A column of a file.</summary>
/// <param name="Name">Its header.</param>
/// <param name="Term">What it is read as; null when it is kept and not used.</param>
/// <param name="Use">The same in words.</param>
/// <param name="Samples">A few of its texts.</param>
internal sealed record PreviewColumnJson(string Name, string? Term, string Use, IReadOnlyList<string> Samples);

/// <summary>What a column can mean.</summary>
internal sealed record TermJson(string Name, string About);

/// <summary>What would become of the first rows.</summary>
internal sealed record PreviewCountsJson(long Read, long Accepted, long Refused);

/// <summary>A row as it would be read.</summary>
internal sealed record PreviewRowJson(
    long Row, IReadOnlyList<string> Cells, string? Taxon, string? Square, string? Dates, IReadOnlyList<string> Doubts, PreviewRefusalJson? Refused)
{
    public static PreviewRowJson Of(PreviewRow row)
    {
        if (row.Record is not { } record)
            return new(row.Row, row.Cells, null, null, null, [], row.Refusal is { } refusal ? new(refusal.Field, refusal.Reason) : null);
        return new(
            row.Row, row.Cells, record.Taxon.ScientificName, record.Square.ToString(), Days(record.Dates), [.. DoubtCatalogue.In(record.Doubts).Select(entry => entry.Code)], null);
    }

    private static string Days(DayRange days) => days.IsOneDay ? Day(days.First) : $"{Day(days.First)}/{Day(days.Last)}";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

/// <summary>Why a row would be refused.</summary>
internal sealed record PreviewRefusalJson(string Field, string Reason);
