using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>One row of a taxon list file as understood by itself, before its references are followed.</summary>
internal sealed record TaxonRow(long Row, long Line, string Raw, Taxon Taxon, string? AcceptedId)
{
    /// <summary>True when the row names a synonym.</summary>
    public bool IsSynonym => AcceptedId is not null;

    /// <summary>The row as a synonym of its accepted taxon.</summary>
    public Synonym ToSynonym(string acceptedId) =>
        new(Taxon.Id, Taxon.ScientificName, acceptedId) { Authorship = Taxon.Authorship, VernacularName = Taxon.VernacularName };

    /// <summary>The refusal of this row.</summary>
    public Refusal Refuse(string field, string value, string reason) => new(Row, Line, field, value, reason, Raw);

    /// <summary>Reads the row that the reader stands on; null with the reason when it says nothing usable.</summary>
    public static TaxonRow? Read(RowReader rows, TaxonColumns columns, long row, out Refusal? refusal)
    {
        string? Text(string column) => columns.IndexOf(column) is >= 0 and var i ? TextOrNull(rows[i]) : null;
        var raw = CharSource.Readable(rows.Raw);
        refusal = null;
        Refusal Refuse(string field, string reason) => new(row, rows.Line, field, Text(field) ?? "", reason, raw);
        string? id = Text(TaxonColumns.Id), name = Text(TaxonColumns.Name), coarsest = Text(TaxonColumns.GeneraliseTo), year = Text(TaxonColumns.FirstYear);
        int? firstYear = Figures.TryRead(year, out var number) && year!.Length == 4 ? number : null;
        var generaliseTo = SizeOf(coarsest);
        if (id is null)
            refusal = Refuse(TaxonColumns.Id, "The taxonID is missing.");
        else if (name is null)
            refusal = Refuse(TaxonColumns.Name, "The name is missing.");
        else if (coarsest is not null && generaliseTo is null)
            refusal = Refuse(TaxonColumns.GeneraliseTo, "The size must be one of 100m, 1km, 2km, 5km, 10km, 100km, or empty for a taxon that is not sensitive.");
        else if (year is not null && firstYear is null)
            refusal = Refuse(TaxonColumns.FirstYear, "The first year must be a number of four figures.");
        var notes = NotesOf(rows, columns);
        TaxonMarksText.Read(notes, out var fault);
        if (refusal is null && fault is not null)
            refusal = new(row, rows.Line, fault.Column, fault.Value, fault.Reason, raw);
        if (refusal is not null)
            return null;
        var authorship = Text(TaxonColumns.Authorship);
        var accepted = Text(TaxonColumns.Accepted);
        return new(row, rows.Line, raw, new Taxon(id!, WithoutAuthorship(name!, authorship))
        {
            Authorship = authorship,
            Rank = Text(TaxonColumns.Rank),
            VernacularName = Text(TaxonColumns.Vernacular),
            ParentId = Text(TaxonColumns.Parent),
            Group = Text(TaxonColumns.Group),
            AggregateId = Text(TaxonColumns.Aggregate),
            GeneraliseTo = generaliseTo,
            FirstYear = firstYear,
            Notes = notes,
        }, accepted == id ? null : accepted);
    }

    private static Dictionary<string, string> NotesOf(RowReader rows, TaxonColumns columns) => columns.OfNotes
        .Select(c => (c.Name, Text: TextOrNull(rows[c.Column])))
        .Where(n => n.Text is not null)
        .ToDictionary(n => n.Name, n => n.Text!);

    private static string? TextOrNull(ReadOnlySpan<char> text) => text.IsWhiteSpace() ? null : NameText.Normalise(text);

    private static string WithoutAuthorship(string name, string? authorship) =>
        authorship is not null && name.EndsWith(" " + authorship, StringComparison.OrdinalIgnoreCase) ? name[..^(authorship.Length + 1)] : name;

    private static SquareSize? SizeOf(string? text) => text?.Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant() switch
    {
        "100M" => SquareSize.M100,
        "1KM" => SquareSize.Km1,
        "2KM" => SquareSize.Km2,
        "5KM" => SquareSize.Km5,
        "10KM" => SquareSize.Km10,
        "100KM" => SquareSize.Km100,
        _ => null,
    };
}
