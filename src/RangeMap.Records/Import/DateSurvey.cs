namespace RangeMap.Records;

/// <summary>Reads the date columns of a whole file for a proof of the order of day and month.</summary>
internal static class DateSurvey
{
    private static readonly Term[] DateTerms = [Term.EventDate, Term.StartDate, Term.EndDate];

    /// <exception cref="ImportProblemException">The file proves both orders, or needs a proof and has none.</exception>
    public static DateOrder Run(RowSource rows, ColumnMapping mapping)
    {
        var cells = new RowCells(rows, mapping);
        var columns = DateTerms.Where(mapping.Has).ToArray();
        var proof = new DateOrderProof();
        while (rows.Read())
        {
            if (rows.Fault is not null || rows.Count != mapping.Columns.Count)
                continue;
            foreach (var term in columns)
                proof.Add(cells[term], rows.Line);
        }

        return proof.Conclude();
    }
}
