using System.Text;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>A file to import.</summary>
/// <param name="Path">Where it is: a file, or a folder with the files of an archive.</param>
/// <param name="Dataset">The data set that its records belong to.</param>
public sealed record ImportRequest(string Path, string Dataset)
{
    /// <summary>The name that people know the file by, where it is not that of the path.</summary>
    public string? FileName { get; init; }

    /// <summary>Who sent it; null for the command line.</summary>
    public string? By { get; init; }

    /// <summary>What is stated about it.</summary>
    public ImportStatements Stated { get; init; } = new();

    internal string NameOfFile => FileName ?? System.IO.Path.GetFileName(System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(Path)));

    /// <summary>What was stated about columns and dates, as a mapping file; null when nothing was.</summary>
    internal string? StatedJson()
    {
        var order = Stated.DateOrder != DateOrder.NotStated ? Stated.DateOrder : Stated.Mapping?.DateOrder ?? DateOrder.NotStated;
        if (Stated.Mapping is null && order == DateOrder.NotStated)
            return null;
        using var json = new MemoryStream();
        ((Stated.Mapping ?? new()) with { DateOrder = order }).Write(json);
        return Encoding.UTF8.GetString(json.ToArray());
    }
}

/// <summary>What a person states about a file before its import.</summary>
public sealed record ImportStatements
{
    /// <summary>Which column means what, where their names do not say so.</summary>
    public MappingFile? Mapping { get; init; }

    /// <summary>Order of day and month in dates such as 3/6/1998.</summary>
    public DateOrder DateOrder { get; init; }

    /// <summary>The sheet of a workbook; null for the first visible one that has a header.</summary>
    public string? Sheet { get; init; }

    /// <summary>Names that the taxon list lacks are added instead of refused.</summary>
    public bool NewTaxa { get; init; }

    /// <summary>Nothing is kept.</summary>
    public bool DryRun { get; init; }
}

/// <summary>What an import did.</summary>
/// <param name="Request">The file.</param>
/// <param name="Figures">The counts.</param>
/// <param name="Mapping">Which column was taken for which term.</param>
/// <param name="Took">How long it took.</param>
public sealed record ImportAnswer(ImportRequest Request, ImportFigures Figures, IReadOnlyDictionary<string, string> Mapping, TimeSpan Took)
{
    /// <summary>What the file turned out to be, and what it says of its origin.</summary>
    public required FileDescription File { get; init; }

    /// <summary>What was noticed about the file, in sentences.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Extensions of an archive, with how many of their rows filled a record.</summary>
    public IReadOnlyList<KeptFile> Kept { get; init; } = [];

    /// <summary>Where beneath the data folder the archive is kept whole, because it has tables of which not every row is used; null otherwise.</summary>
    public string? KeptAs { get; init; }

    /// <summary>Cells about what was seen that were not understood and are kept as written, by term.</summary>
    public IReadOnlyDictionary<Term, long> NotUnderstood { get; init; } = new Dictionary<Term, long>();

    /// <summary>Names that the list does not have.</summary>
    public required UnknownNames UnknownNames { get; init; }
}
