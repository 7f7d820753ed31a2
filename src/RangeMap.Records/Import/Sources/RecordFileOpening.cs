namespace RangeMap.Records;

/// <summary>Tells from its bytes what a file is, and opens it.</summary>
internal static class RecordFileOpening
{
    /// <summary>Opens a file.</summary>
    /// <param name="stream">Read from where it stands; not closed. Must be able to seek for a zip file.</param>
    /// <param name="options">What is stated about it.</param>
    /// <exception cref="ImportProblemException">It is of a kind that is not read, or damaged.</exception>
    public static RecordFile Of(Stream stream, ImportOptions options)
    {
        var first = new byte[FileSignature.Length];
        var count = stream.ReadAtLeast(first, first.Length, throwOnEndOfStream: false);
        if (stream.CanSeek)
            stream.Position -= count;
        var whole = stream.CanSeek ? stream : new ReplayedStream(first.AsMemory(0, count), stream);
        var form = FileSignature.Of(first.AsSpan(0, count), out var what, out var mend);
        return form switch
        {
            FileForm.Refused => throw ContainerProblem.Of(what, "first bytes of the file", mend),
            FileForm.Zip => OfZip(stream, options),
            _ => new DelimitedFile(stream, whole, form == FileForm.Gzip, options),
        };
    }

    /// <summary>Opens a folder that holds an archive or one table.</summary>
    public static RecordFile OfFolder(string path, ImportOptions options) => OfBundle(null, FolderBundle.Open(path, options.Limits), options);

    private static RecordFile OfZip(Stream stream, ImportOptions options)
    {
        if (!stream.CanSeek || stream.Position != 0)
            throw ContainerProblem.Of("A zip file cannot be read from a pipe.", "zip file", "Save it and import the file.");
        return OfBundle(stream, ZipBundle.Open(stream, options.Limits), options);
    }

    private static RecordFile OfBundle(Stream? stream, FileBundle files, ImportOptions options)
    {
        try
        {
            if (Archive.DescriptionIn(files) is { } description)
                return new ArchiveFile(stream, files, description, options.Limits);
            if (stream is not null && Workbook.IsWorkbook(files))
                return new WorksheetFile(stream, files, options);
            return new SingleTableFile(stream, files, options);
        }
        catch (ImportProblemException)
        {
            files.Dispose();
            throw;
        }
    }
}
