namespace RangeMap.Records;

/// <summary>The columns that a download of refusals has beside the file's own; a reader knows and ignores them.</summary>
public static class RefusalColumns
{
    /// <summary>Line of the row in the file that was refused.</summary>
    public const string Line = "refusedLine";

    /// <summary>Column at fault.</summary>
    public const string Field = "refusedField";

    /// <summary>What is wrong and how to mend it. Its presence tells that cells are guarded against formulas.</summary>
    public const string Reason = "refusedReason";

    /// <summary>The row as it stood, where it could not be split into the file's columns.</summary>
    public const string Text = "refusedText";

    /// <summary>All of them, in the order in which they are written.</summary>
    public static IReadOnlyList<string> All { get; } = [Line, Field, Reason, Text];

    /// <summary>True for the name of one of them.</summary>
    public static bool Contains(string column) => All.Contains(column, StringComparer.OrdinalIgnoreCase);
}
