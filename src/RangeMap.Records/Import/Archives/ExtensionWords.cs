using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>What became of the rows of an extension, in a sentence for the person who imports.</summary>
internal static class ExtensionWords
{
    /// <summary>The sentence.</summary>
    public static string Of(KeptFile file)
    {
        var sentence = $"{file.Name}: {Counted(file.Rows)} of {file.RowType}, " + UseOf(file);
        if (file.BeyondLimit > 0)
            sentence += $"; of those left, {Counted(file.BeyondLimit)} went beyond what can be held in memory at once";
        if (file.Orphans > 0)
            sentence += $"; {Counted(file.Orphans)} belong{(file.Orphans == 1 ? "s" : "")} to no row of the core";
        return sentence + ".";
    }

    private static string Counted(long rows) => rows == 1 ? "1 row" : Invariant($"{rows:N0} rows");

    private static string UseOf(KeptFile file)
    {
        if (file.Used > 0)
            return Invariant($"{file.Used:N0} filled a record, {file.Left:N0} left in the archive");
        return file.RowType.StartsWith("Identification", StringComparison.Ordinal)
            ? "kept with the archive; it changes no name, for the name of the occurrence itself counts"
            : "counted and not used";
    }
}
