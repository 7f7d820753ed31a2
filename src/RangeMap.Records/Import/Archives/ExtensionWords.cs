using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>What became of the rows of an extension, in a sentence for the person who imports.</summary>
internal static class ExtensionWords
{
    /// <summary>The sentence.</summary>
    public static string Of(KeptFile file)
    {
        var sentence = Invariant($"{file.Name}: {file.Rows:N0} rows of {file.RowType}, ") + UseOf(file);
        if (file.BeyondLimit > 0)
            sentence += Invariant($"; of those left, {file.BeyondLimit:N0} were more than can be held in memory at once");
        if (file.Orphans > 0)
            sentence += Invariant($"; {file.Orphans:N0} of them belong to no row of the core");
        return sentence + ".";
    }

    private static string UseOf(KeptFile file)
    {
        if (file.Used > 0)
            return Invariant($"{file.Used:N0} filled a record, {file.Left:N0} left in the archive");
        return file.RowType.StartsWith("Identification", StringComparison.Ordinal)
            ? "kept with the archive; they change no name, for the name of the occurrence itself counts"
            : "counted and not used";
    }
}
