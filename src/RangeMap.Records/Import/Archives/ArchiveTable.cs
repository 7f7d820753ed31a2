namespace RangeMap.Records;

/// <summary>A column as meta.xml describes it.</summary>
/// <param name="Index">Its place in the file, from 0; null where the default holds for every row.</param>
/// <param name="Term">The identifier of its meaning, a URI.</param>
/// <param name="Default">What an empty cell says; null for nothing.</param>
internal sealed record ArchiveField(int? Index, string Term, string? Default)
{
    /// <summary>The last word of the term.</summary>
    public string ShortName => Term[(Term.TrimEnd('/', '#').LastIndexOfAny(['/', '#', ':']) + 1)..].TrimEnd('/', '#');
}

/// <summary>One table of an archive, of which the Darwin Core text guide (https://dwc.tdwg.org/text/) speaks as core or extension.</summary>
internal sealed record ArchiveTable
{
    /// <summary>What a row is: a URI.</summary>
    public required string RowType { get; init; }

    /// <summary>The files that hold the rows, in order.</summary>
    public required IReadOnlyList<string> Files { get; init; }

    /// <summary>The columns.</summary>
    public required IReadOnlyList<ArchiveField> Fields { get; init; }

    /// <summary>The column, from 0, of the identifier (core) or of the core row that the row belongs to (extension); null for none.</summary>
    public int? IdIndex { get; init; }

    /// <summary>The encoding stated; null to tell it from the file.</summary>
    public TextEncoding? Encoding { get; init; }

    /// <summary>The character between fields.</summary>
    public char Separator { get; init; } = ',';

    /// <summary>Line ends and quotation marks.</summary>
    public required RowDialect Dialect { get; init; }

    /// <summary>Lines at the beginning of each file that are no rows.</summary>
    public int HeaderLines { get; init; }

    /// <summary>The order of numeric dates, where dateFormat tells it.</summary>
    public DateOrder DateOrder { get; init; }

    /// <summary>The last word of the row type, such as Occurrence.</summary>
    public string Kind => RowType[(RowType.LastIndexOfAny(['/', '#', ':']) + 1)..];

    /// <summary>True when a row is an occurrence; two older names of the row type count too.</summary>
    public bool HoldsOccurrences => Kind is "Occurrence" or "SimpleDarwinRecord" or "DarwinCore";

    /// <summary>The greatest place that the table speaks of; -1 for none.</summary>
    public int LastIndex => Fields.Select(f => f.Index ?? -1).Append(IdIndex ?? -1).Max();
}

/// <summary>What meta.xml says of an archive.</summary>
/// <param name="Core">The table at the centre.</param>
/// <param name="Extensions">The tables whose rows belong to rows of the core.</param>
/// <param name="MetadataFile">The file that describes the data set; null for none.</param>
internal sealed record ArchiveDescription(ArchiveTable Core, IReadOnlyList<ArchiveTable> Extensions, string? MetadataFile);
