using System.Globalization;
using System.Text;
using System.Text.Json;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Reads what a question about imports names.</summary>
internal static class ImportAsk
{
    /// <summary>A file that was sent.</summary>
    /// <exception cref="UserException">There is none of this name.</exception>
    public static Upload Upload(ImportRunner runner, string id) => runner.TryFind(id, out var upload) ? upload : throw Unknown(id);

    /// <summary>A finished import, by its number or by the name that its file got on arrival.</summary>
    /// <exception cref="UserException">There is none, or it is not over.</exception>
    public static StoredBatch Batch(DataFolder folder, ImportRunner runner, string id)
    {
        if (runner.TryFind(id, out var upload))
        {
            var number = upload.State is ImportState.Done or ImportState.Undone ? upload.Answer?.Figures.Batch : null;
            id = (number ?? throw new UserException("This import is not over.", "id", "Wait for its end.", StatusCodes.Status409Conflict)).ToString(CultureInfo.InvariantCulture);
        }

        return long.TryParse(id, NumberStyles.None, CultureInfo.InvariantCulture, out var batch) && new BatchStore(folder.Database).Read(batch) is { } found
            ? found
            : throw Unknown(id);
    }

    /// <summary>What is stated about a file.</summary>
    /// <exception cref="UserException">The mapping or the order of dates is not understood.</exception>
    public static ImportStatements Statements(StartJson? start) => new()
    {
        Mapping = start?.Mapping is { ValueKind: not (JsonValueKind.Null or JsonValueKind.Undefined) } mapping ? Mapping(mapping.GetRawText()) : null,
        DateOrder = Order(start?.DateOrder),
        Sheet = string.IsNullOrEmpty(start?.Sheet) ? null : start.Sheet,
        NewTaxa = start?.NewTaxa ?? false,
        DryRun = start?.DryRun ?? false,
    };

    /// <summary>What was stated about the columns of an earlier import.</summary>
    public static MappingFile? MappingOf(StoredBatch batch) => batch.Stated is { } stated ? Mapping(stated) : null;

    /// <summary>An order of day and month.</summary>
    /// <exception cref="UserException">The word is not known.</exception>
    public static DateOrder Order(string? word) => word?.ToUpperInvariant() switch
    {
        null or "" => DateOrder.NotStated,
        "DMY" => DateOrder.DayFirst,
        "MDY" => DateOrder.MonthFirst,
        _ => throw new UserException($"'{word}' is no order of dates.", "dateOrder", "Use dmy where the day comes first, mdy where the month does.") { IsArgument = true },
    };

    private static MappingFile Mapping(string json)
    {
        try
        {
            return MappingFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(json)));
        }
        catch (ImportProblemException stopped)
        {
            throw new UserException(stopped.Problem.What, stopped.Problem.Where, stopped.Problem.Mend);
        }
    }

    private static UserException Unknown(string id) =>
        new($"There is no import '{id}'.", "id", "GET /api/v1/imports lists them.", StatusCodes.Status404NotFound);
}

/// <summary>What is stated about a file when its import starts.</summary>
/// <param name="Mapping">A mapping file.</param>
/// <param name="DateOrder">dmy or mdy.</param>
/// <param name="Sheet">Sheet of a workbook.</param>
/// <param name="NewTaxa">Names that the list lacks are added.</param>
/// <param name="DryRun">Nothing is kept.</param>
internal sealed record StartJson(JsonElement Mapping, string? DateOrder, string? Sheet, bool NewTaxa = false, bool DryRun = false);
