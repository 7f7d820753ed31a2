namespace RangeMap.Records;

/// <summary>Reads a taxon list: one row a name, a synonym where acceptedNameUsageID names another row.</summary>
public static class TaxonListReader
{
    /// <summary>Reads the whole list. Rows that repeat an identifier, or that refer to a taxon which is not there, are refused.</summary>
    /// <param name="stream">Delimited text in any encoding and with any separator that records may have; not closed.</param>
    /// <param name="known">Taxa that are loaded already and may be referred to; null for none.</param>
    /// <exception cref="ImportProblemException">The file as a whole cannot be read.</exception>
    public static TaxonListReading Read(Stream stream, TaxonList? known = null)
    {
        var file = DelimitedRows.Open(stream, encoding: null, separator: null);
        var columns = new TaxonColumns(file.Header);
        var refusals = new List<Refusal>();
        var rows = ReadRows(file, columns, refusals);
        var references = new TaxonReferences(rows, known ?? TaxonList.Empty);
        refusals.AddRange(references.RefuseDangling());
        refusals.AddRange(references.RefuseHomonyms());
        var list = new TaxonList(references.Accepted(), references.Synonyms());
        return new(list, [.. refusals.OrderBy(r => r.Row)], columns.Unknown, file.Header, file.Rows.Separator);
    }

    private static Dictionary<string, TaxonRow> ReadRows(DelimitedRows file, TaxonColumns columns, List<Refusal> refusals)
    {
        var byId = new Dictionary<string, TaxonRow>(StringComparer.Ordinal);
        long row = 0;
        while (file.Rows.Read())
        {
            row++;
            if (FaultOf(file) is { } fault)
            {
                refusals.Add(new(row, file.Rows.Line, "", "", fault, CharSource.Readable(file.Rows.Raw)));
                continue;
            }

            var read = TaxonRow.Read(file.Rows, columns, row, out var refusal);
            if (read is not null && !byId.TryAdd(read.Taxon.Id, read))
                refusal = read.Refuse(TaxonColumns.Id, read.Taxon.Id, $"The taxonID stands on line {byId[read.Taxon.Id].Line} already.");
            if (refusal is not null)
                refusals.Add(refusal);
        }

        return byId;
    }

    private static string? FaultOf(DelimitedRows file)
    {
        if (file.Rows.Fault is { } broken)
            return broken;
        if (file.Rows.Raw.Contains('\0') || (file.Source.MayHoldBadText && CharSource.FirstLoneSurrogate(file.Rows.Raw) >= 0))
            return "The row holds NUL characters or bytes that are no characters in the file's encoding. Save the file as UTF-8.";
        return file.Rows.Count == file.Header.Count ? null : $"The row has {file.Rows.Count} fields and the header {file.Header.Count}.";
    }
}
