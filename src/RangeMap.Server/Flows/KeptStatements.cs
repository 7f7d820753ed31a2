using System.Text.Json;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>What was stated about an import beside its columns, kept with it, so that its refused rows are read again as they were the first time.</summary>
/// <param name="NewTaxa">Names that the list lacked were added.</param>
/// <param name="DateOrder">The order that numeric dates were read in, stated or proved by the whole file; the refused rows alone may prove none.</param>
internal sealed record KeptStatements(bool NewTaxa, DateOrder DateOrder)
{
    /// <summary>What to keep of an import.</summary>
    public static string JsonOf(ImportRequest request, RecordReader reader) => JsonSerializer.Serialize(new KeptStatements(request.Stated.NewTaxa, reader.DateOrder));

    /// <summary>What was stated about an import, for its refused rows. They are CSV: the sheet of a workbook is no part of it.</summary>
    /// <param name="batch">The import.</param>
    /// <param name="mapping">What was stated about its columns.</param>
    public static ImportStatements Of(StoredBatch batch, MappingFile? mapping)
    {
        var kept = batch.Options is { } json ? JsonSerializer.Deserialize<KeptStatements>(json) : null;
        return new() { Mapping = mapping, NewTaxa = kept?.NewTaxa ?? false, DateOrder = kept?.DateOrder ?? DateOrder.NotStated };
    }
}
