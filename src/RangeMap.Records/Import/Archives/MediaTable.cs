namespace RangeMap.Records;

/// <summary>
/// Photographs, films and sounds of an archive: http://rs.gbif.org/terms/1.0/Multimedia, http://rs.gbif.org/terms/1.0/Image, and
/// Multimedia of Audiovisual Core (http://rs.tdwg.org/ac/terms/).
/// </summary>
/// <param name="holdsImages">True where every row is an image.</param>
internal sealed class MediaTable(bool holdsImages) : ExtensionTable
{
    /// <summary>Columns that may hold a web address, the file itself before the page about it.</summary>
    public static IReadOnlyList<string> LinkNames { get; } = ["identifier", "accessURI", "references"];

    /// <summary>Longer addresses, in characters, are left; several must fit together.</summary>
    private const int LongestLink = 2_000;

    /// <inheritdoc/>
    public override IReadOnlyList<Term> Terms { get; } = [Term.Evidence, Term.EvidenceLink];

    /// <inheritdoc/>
    public override ExtensionCells? Read(ExtensionRow row)
    {
        foreach (var name in LinkNames)
        {
            var text = row[name];
            if (text.Length is > 0 and <= LongestLink && EvidenceLink.Shown(text.ToString()) is { } address)
                return EvidenceOf(row) is { } evidence ? new(Evidence: evidence, Link: address.OriginalString) : null;
        }

        return null;
    }

    /// <summary>What the row shows: as its type says, else its format, else a photograph, which most are. Null for a text and the like.</summary>
    private string? EvidenceOf(ExtensionRow row)
    {
        ReadOnlySpan<char> type = row["type"], format = row["format"];
        type = type[(type.LastIndexOf('/') + 1)..];
        if (holdsImages || (type.IsEmpty && format.IsEmpty))
            return "photograph";
        if (!type.IsEmpty && ControlledWords.Evidence.Find(type) is { } word)
            return word is "photograph" or "video" or "sound" ? word : null;
        if (format.StartsWith("image", StringComparison.OrdinalIgnoreCase))
            return "photograph";
        if (format.StartsWith("video", StringComparison.OrdinalIgnoreCase))
            return "video";
        return format.StartsWith("audio", StringComparison.OrdinalIgnoreCase) ? "sound" : null;
    }
}
