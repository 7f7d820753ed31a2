namespace RangeMap.Records;

/// <summary>The columns of a taxon list file.</summary>
internal sealed class TaxonColumns
{
    public const string Id = "taxonID";
    public const string Name = "scientificName";
    public const string Authorship = "scientificNameAuthorship";
    public const string Rank = "taxonRank";
    public const string Vernacular = "vernacularName";
    public const string Parent = "parentNameUsageID";
    public const string Accepted = "acceptedNameUsageID";
    public const string Group = "group";
    public const string Aggregate = "aggregate";
    public const string GeneraliseTo = "generaliseTo";
    public const string FirstYear = "firstYear";

    private static readonly string[] Fields = [Id, Name, Authorship, Rank, Vernacular, Parent, Accepted, Group, Aggregate, GeneraliseTo, FirstYear];
    private static readonly string[] Notes = [.. TaxonMarksText.Columns];
    private readonly Dictionary<string, int> _columns = new(StringComparer.OrdinalIgnoreCase);

    /// <exception cref="ImportProblemException">A header stands twice, or a column that is needed is missing.</exception>
    public TaxonColumns(IReadOnlyList<string> header)
    {
        for (var i = 0; i < header.Count; i++)
        {
            var name = Plain(header[i], i);
            if (!_columns.TryAdd(name, i))
                throw new ImportProblemException(new($"Two columns are called \"{name}\".", "header of the taxon list", "Give each column a name of its own."));
        }

        var missing = ((string[])[Id, Name]).Where(n => !_columns.ContainsKey(n)).ToList();
        if (missing.Count > 0)
        {
            throw new ImportProblemException(new(
                $"The taxon list has no column {string.Join(" and none ", missing)}.", $"columns found: {string.Join(", ", header)}",
                "taxonID and scientificName are required; rename the columns that hold them."));
        }
    }

    /// <summary>Columns that are kept among the notes although their meaning is not known.</summary>
    public IReadOnlyList<string> Unknown => [.. _columns.Keys.Where(c => !IsIn(c, Fields) && !IsIn(c, Notes))];

    /// <summary>Columns that go into the notes, with their places.</summary>
    public IEnumerable<(string Name, int Column)> OfNotes => _columns
        .Where(c => !IsIn(c.Key, Fields) && !RefusalColumns.Contains(c.Key))
        .Select(c => (Notes.FirstOrDefault(n => n.Equals(c.Key, StringComparison.OrdinalIgnoreCase)) ?? c.Key, c.Value));

    /// <summary>The place of a column, or -1.</summary>
    public int IndexOf(string name) => _columns.GetValueOrDefault(name, -1);

    private static bool IsIn(string column, string[] names) => names.Contains(column, StringComparer.OrdinalIgnoreCase);

    private static string Plain(string header, int place)
    {
        var name = header.StartsWith("dwc:", StringComparison.OrdinalIgnoreCase) ? header[4..] : header;
        return name.Length == 0 ? $"(column {place + 1})" : name;
    }
}
