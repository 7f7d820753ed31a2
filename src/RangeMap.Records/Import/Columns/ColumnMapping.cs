namespace RangeMap.Records;

/// <summary>Which column of a file means what, as found from the header and stated by a mapping file.</summary>
public sealed class ColumnMapping
{
    private readonly int[] _columnOfTerm = Enumerable.Repeat(-1, Enum.GetValues<Term>().Length).ToArray();
    private readonly Term?[] _termOfColumn;

    private ColumnMapping(IReadOnlyList<string> columns, MappingFile? stated)
    {
        Columns = columns;
        _termOfColumn = new Term?[columns.Count];
        Defaults = stated?.Defaults ?? new Dictionary<Term, string>();
    }

    /// <summary>The headers in the order of the file.</summary>
    public IReadOnlyList<string> Columns { get; }

    /// <summary>What a term says where its column is missing or its cell is empty.</summary>
    public IReadOnlyDictionary<Term, string> Defaults { get; }

    /// <summary>Each column with the term it is read as, or "kept, not used".</summary>
    public IReadOnlyDictionary<string, string> Report => Columns
        .Select((name, i) => (name, Use: _termOfColumn[i] is { } term ? TermNames.Name(term) : RefusalColumns.Contains(name) ? "from an earlier refusal, ignored" : "kept, not used"))
        .ToDictionary(p => p.name, p => p.Use);

    /// <summary>Finds what the columns mean. A statement beats an official name, which beats a plain name.</summary>
    /// <exception cref="ImportProblemException">Headers repeat, two columns claim one term, a stated column is missing, or no taxon, place or date can be had.</exception>
    public static ColumnMapping From(IReadOnlyList<string> header, MappingFile? stated)
    {
        var columns = NamesOf(header);
        RefuseRepeats(columns);
        var mapping = new ColumnMapping(columns, stated);
        mapping.TakeStated(stated);
        mapping.Take(TermNames.FindOfficial, stated);
        mapping.Take(TermNames.FindPlain, stated);
        mapping.RequireTheNeedful();
        return mapping;
    }

    /// <summary>What the columns mean as far as their names tell, for a person to complete: of two that claim one term the first has it.</summary>
    /// <param name="header">The headers.</param>
    /// <param name="stated">What was stated so far; statements about columns that are not there, or that claim a term again, are passed over.</param>
    public static ColumnMapping Draft(IReadOnlyList<string> header, MappingFile? stated = null)
    {
        var mapping = new ColumnMapping(NamesOf(header), stated);
        var said = new Dictionary<string, Term?>(stated?.Columns ?? new Dictionary<string, Term?>(), StringComparer.OrdinalIgnoreCase);
        for (var column = 0; column < header.Count; column++)
        {
            if (said.GetValueOrDefault(mapping.Columns[column]) is { } term && mapping.ColumnOf(term) < 0)
                mapping.Assign(column, term);
        }

        foreach (var find in (Func<string, Term?>[])[TermNames.FindOfficial, TermNames.FindPlain])
        {
            for (var column = 0; column < header.Count; column++)
            {
                if (mapping.TermOf(column) is null && !said.ContainsKey(mapping.Columns[column]) && find(mapping.Columns[column]) is { } term && mapping.ColumnOf(term) < 0)
                    mapping.Assign(column, term);
            }
        }

        return mapping;
    }

    /// <summary>The names that columns are known by: their headers, or their places where they have none.</summary>
    internal static string[] NamesOf(IReadOnlyList<string> header) =>
        [.. header.Select((name, i) => string.IsNullOrWhiteSpace(name) ? $"(column {i + 1})" : name.Trim())];

    /// <summary>The column of a term, counted from 0, or -1.</summary>
    public int ColumnOf(Term term) => _columnOfTerm[(int)term];

    /// <summary>The term of a column, or null.</summary>
    public Term? TermOf(int column) => _termOfColumn[column];

    /// <summary>True when the term has a column or a default.</summary>
    public bool Has(Term term) => ColumnOf(term) >= 0 || Defaults.ContainsKey(term);

    /// <summary>The header under which a term stands in the file, for messages.</summary>
    public string HeaderOf(Term term) => ColumnOf(term) >= 0 ? Columns[ColumnOf(term)] : TermNames.Name(term);

    private static void RefuseRepeats(string[] columns)
    {
        var repeated = columns.GroupBy(c => c, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1)?.Key;
        if (repeated is not null)
            throw new ImportProblemException(new($"Two columns are called \"{repeated}\".", "header", "Give each column a name of its own."));
    }

    private void TakeStated(MappingFile? stated)
    {
        foreach (var (name, term) in stated?.Columns ?? new Dictionary<string, Term?>())
        {
            var column = ((List<string>)[.. Columns]).FindIndex(c => c.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));
            if (column < 0)
                throw new ImportProblemException(new($"The mapping names a column \"{name}\" that the file does not have.", $"columns found: {string.Join(", ", Columns)}", "Correct the mapping file."));
            if (term is { } known)
                Assign(column, known);
        }
    }

    private void Take(Func<string, Term?> find, MappingFile? stated)
    {
        var found = Columns
            .Select((name, column) => (Column: column, Term: find(name)))
            .Where(f => f.Term is { } term && ColumnOf(term) < 0 && _termOfColumn[f.Column] is null && stated?.Columns.Keys.Contains(Columns[f.Column], StringComparer.OrdinalIgnoreCase) != true)
            .Select(f => (f.Column, Term: f.Term!.Value))
            .ToList();
        // Of several columns for one detail the most usual name has it; the others are kept with the row.
        foreach (var details in found.Where(f => TermNames.IsDetail(f.Term)).GroupBy(f => f.Term))
            Assign(details.MinBy(f => TermNames.RankOf(f.Term, Columns[f.Column])).Column, details.Key);
        foreach (var (column, term) in found.Where(f => !TermNames.IsDetail(f.Term)))
            Assign(column, term);
    }

    private void Assign(int column, Term term)
    {
        if (ColumnOf(term) >= 0)
        {
            throw new ImportProblemException(new(
                $"Two columns could both be the {TermNames.Name(term)}: \"{Columns[ColumnOf(term)]}\" and \"{Columns[column]}\".", "header",
                $"Say which one counts in a mapping file: {{\"columns\":{{\"{Columns[column]}\":\"{TermNames.Name(term)}\",\"{Columns[ColumnOf(term)]}\":null}}}}."));
        }

        _columnOfTerm[(int)term] = column;
        _termOfColumn[column] = term;
    }

    private void RequireTheNeedful()
    {
        var missing = new List<string>();
        if (!Has(Term.ScientificName) && !Has(Term.TaxonId) && !Has(Term.VernacularName))
            missing.Add("a taxon (scientificName, taxonID or vernacularName)");
        if (!Has(Term.EventDate) && !Has(Term.Year) && !Has(Term.StartDate))
            missing.Add("a date (eventDate, year or startDate)");
        if (!Has(Term.GridReference) && !(Has(Term.DecimalLatitude) && Has(Term.DecimalLongitude)))
            missing.Add("a place (gridReference, or decimalLatitude and decimalLongitude)");
        if (missing.Count > 0)
        {
            throw new ImportProblemException(new(
                $"No column was recognised for {string.Join(", nor for ", missing)}.", $"columns found: {string.Join(", ", Columns)}",
                "Rename the columns, or say what they mean in a mapping file."));
        }
    }
}
