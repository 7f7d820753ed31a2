namespace RangeMap.Records;

/// <summary>A Darwin Core Archive with its description.</summary>
internal sealed class Archive
{
    private const string DescriptionName = "meta.xml";
    private readonly FileBundle _files;
    private readonly FileLimits _limits;
    private readonly ArchiveDescription _description;
    private readonly List<string> _notes = [];
    private IReadOnlyList<ExtensionIndex>? _indexes;

    private Archive(FileBundle files, FileLimits limits, ArchiveDescription description)
    {
        _files = files;
        _limits = limits;
        _description = description;
    }

    /// <summary>What the archive says of its origin; null where it says nothing.</summary>
    public ArchiveCitation? Citation { get; private set; }

    /// <summary>Where the description of an archive lies among the files; null if they are none.</summary>
    public static string? DescriptionIn(FileBundle files) => files.Find(files.Root + DescriptionName);

    /// <exception cref="ImportProblemException">The description cannot be followed, or the archive holds no occurrences.</exception>
    public static Archive Open(FileBundle files, string description, FileLimits limits)
    {
        var archive = new Archive(files, limits, ArchiveDescriptionReader.Read(files, description, limits));
        archive.ReadCitation();
        return archive;
    }

    /// <summary>Opens the occurrences from the beginning.</summary>
    public OccurrenceRows OpenRows(out ArchiveTally tally)
    {
        var (core, extensions) = (_description.Core, _description.Extensions);
        var occurrences = core.HoldsOccurrences ? core : extensions.FirstOrDefault(e => e.HoldsOccurrences);
        if (occurrences is null)
        {
            throw ContainerProblem.Of(
                $"The archive holds no occurrences: its core is of {core.Kind}" + (extensions.Count > 0 ? $", its extensions of {string.Join(", ", extensions.Select(e => e.Kind))}." : "."),
                DescriptionName, "Ask for an archive with occurrences, as core or as extension.");
        }

        var others = extensions.Where(e => e != occurrences).ToList();
        _indexes ??= [.. others.Select(e => IndexOf(e, occurrences == core)).OfType<ExtensionIndex>()];
        tally = new ArchiveTally(_files, others, _notes);
        return new OccurrenceRows(new TableRows(_files, occurrences), occurrences == core ? null : IndexOf(core, occurrences), new ExtensionFill(_indexes), tally);
    }

    private ExtensionIndex? IndexOf(ArchiveTable extension, bool coreHoldsOccurrences)
    {
        try
        {
            return ExtensionIndex.Read(_files, extension, coreHoldsOccurrences, _limits);
        }
        catch (ImportProblemException)
        {
            // It is told when the rows are counted; the occurrences are sound without it.
            return null;
        }
    }

    private CoreIndex IndexOf(ArchiveTable core, ArchiveTable occurrences)
    {
        if (core.IdIndex is null || occurrences.IdIndex is null)
            throw ContainerProblem.Of($"Nothing tells which row of {core.Kind} an occurrence belongs to.", DescriptionName, "The core needs an element id, the extension an element coreid.");
        using var rows = new TableRows(_files, core);
        return CoreIndex.Read(rows, _limits);
    }

    private void ReadCitation()
    {
        var name = _description.MetadataFile ?? _files.Root + "eml.xml";
        if (_files.Find(name) is not { } found)
        {
            if (_description.MetadataFile is not null)
                _notes.Add($"The file {name}, which should tell title and licence, is not in the archive.");
            return;
        }

        try
        {
            Citation = CitationReader.Read(_files, found, _limits);
        }
        catch (ImportProblemException stopped)
        {
            // Title and licence are no reason to lose the records.
            _notes.Add($"Title and licence could not be read: {stopped.Message}");
        }
    }
}
