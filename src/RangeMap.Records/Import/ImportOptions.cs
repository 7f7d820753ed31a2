namespace RangeMap.Records;

/// <summary>What the person who imports a file says about it.</summary>
public sealed record ImportOptions
{
    /// <summary>The day of the import; records of later days are refused.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Which columns mean what, where their names do not say so; null to go by the names alone.</summary>
    public MappingFile? Mapping { get; init; }

    /// <summary>The order of dates such as 3/6/1998. Not stated: the file's own rows must prove it. Overrides the mapping's.</summary>
    public DateOrder DateOrder { get; init; }

    /// <summary>True when WA and WV grid references are on WGS84 instead of ED50.</summary>
    public bool ChannelIslandsWgs84 { get; init; }

    /// <summary>Names that a person accepted once for a taxon of the list.</summary>
    public AcceptedNames AcceptedNames { get; init; } = AcceptedNames.None;

    /// <summary>True to add names that the list does not have as new taxa instead of refusing their rows.</summary>
    public bool NewTaxa { get; init; }

    /// <summary>What the checks may ask; on its own they go by the record and the taxon list alone.</summary>
    public CheckContext Checks { get; init; } = new();

    /// <summary>Compares the records with each other and with what it was primed with; null to leave that out. One for each import.</summary>
    public FileChecks? FileChecks { get; init; }

    /// <summary>The encoding; null to tell it from the file.</summary>
    public TextEncoding? Encoding { get; init; }

    /// <summary>The separator; null to tell it from the header.</summary>
    public char? Separator { get; init; }

    /// <summary>The worksheet to read of a workbook; null for the first visible one that has a header.</summary>
    public string? Sheet { get; init; }

    /// <summary>About how many rows the file has, where that can be told; memory is then made ready at once. 0 where it is not known.</summary>
    public long ExpectedRows { get; init; }

    /// <summary>How much a packed file may hold.</summary>
    public FileLimits Limits { get; init; } = FileLimits.Default;
}
