using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>The files of a folder and of the folders in it. Links are not followed.</summary>
internal sealed class FolderBundle : FileBundle
{
    private readonly FileLimits _limits;
    private readonly Dictionary<string, FileInfo> _files = new(StringComparer.Ordinal);

    private FolderBundle(string path, FileLimits limits)
    {
        _limits = limits;
        Name = $"the folder {Path.GetFileName(Path.TrimEndingDirectorySeparator(path))}";
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Names => [.. _files.Keys];

    /// <summary>Looks through a folder.</summary>
    /// <exception cref="ImportProblemException">It is not there, or holds too much.</exception>
    public static FolderBundle Open(string path, FileLimits limits)
    {
        try
        {
            var bundle = new FolderBundle(path, limits);
            bundle.TakeFiles(path);
            return bundle;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw ContainerProblem.Of($"The folder cannot be read: {e.Message}", path, "Check its name and that you may read it.");
        }
    }

    /// <inheritdoc/>
    public override Stream Open(string name, long? mostBytes = null) =>
        new LimitedStream(_files[name].OpenRead(), new(name), _limits, mostBytes ?? long.MaxValue);

    /// <inheritdoc/>
    public override void Dispose()
    {
    }

    private void TakeFiles(string path)
    {
        var options = new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint, MaxRecursionDepth = 3 };
        foreach (var file in new DirectoryInfo(path).EnumerateFiles("*", options))
        {
            var name = Path.GetRelativePath(path, file.FullName).Replace(Path.DirectorySeparatorChar, '/');
            if (IsLitter(name))
                continue;
            if (_files.Count == _limits.Entries)
                throw ContainerProblem.Of(Invariant($"The folder holds more than {_limits.Entries:N0} files."), path, "Name the folder that holds the archive alone.");
            _files.Add(name, file);
        }
    }
}
