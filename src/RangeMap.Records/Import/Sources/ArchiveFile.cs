namespace RangeMap.Records;

/// <summary>A Darwin Core Archive with a description.</summary>
internal sealed class ArchiveFile : RecordFile
{
    private readonly FileBundle _files;
    private readonly Archive _archive;
    private ArchiveTally? _tally;

    /// <param name="stream">What the archive is read from; null for a folder.</param>
    /// <param name="files">The files inside; closed with this.</param>
    /// <param name="description">Which of them describes the others.</param>
    /// <param name="limits">How much they may hold.</param>
    public ArchiveFile(Stream? stream, FileBundle files, string description, FileLimits limits)
        : base(stream)
    {
        _files = files;
        _archive = Archive.Open(files, description, limits);
    }

    /// <inheritdoc/>
    public override FileDescription Description => new(FileKind.Archive, "a Darwin Core Archive", Citation: _archive.Citation);

    /// <inheritdoc/>
    public override IReadOnlyList<KeptFile> Kept => _tally?.Kept ?? [];

    /// <inheritdoc/>
    public override RowSource Open() => _archive.OpenRows(out _tally);

    /// <inheritdoc/>
    public override void Dispose()
    {
        _files.Dispose();
        base.Dispose();
    }

    /// <inheritdoc/>
    protected override RowSource OpenAgain() => _archive.OpenRows(out _);
}
