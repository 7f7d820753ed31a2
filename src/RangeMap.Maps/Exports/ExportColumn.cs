namespace RangeMap.Maps;

/// <summary>What the cells of a column hold.</summary>
public enum ExportKind
{
    /// <summary>Text.</summary>
    Text = 0,

    /// <summary>A whole number.</summary>
    Whole = 1,

    /// <summary>A number with a fraction.</summary>
    Number = 2,

    /// <summary>A day, ISO 8601.</summary>
    Day = 3,

    /// <summary>True or false.</summary>
    Truth = 4,
}

/// <summary>One column of an export. All formats, their descriptions and the data dictionary are made from these definitions and from no others.</summary>
/// <param name="Name">The name: that of Darwin Core where it has one.</param>
/// <param name="Kind">What its cells hold.</param>
/// <param name="Description">What it means, with units, a sentence.</param>
/// <param name="Term">Address of the published term that it is; null for a column of our own.</param>
/// <param name="Required">False where a cell may be empty.</param>
public sealed record ExportColumn(string Name, ExportKind Kind, string Description, string? Term = null, bool Required = true);
