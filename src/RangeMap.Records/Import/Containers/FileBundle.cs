namespace RangeMap.Records;

/// <summary>Files that belong together: the entries of a zip file, or the files of a folder.</summary>
internal abstract class FileBundle : IDisposable
{
    private const string Description = "meta.xml";

    /// <summary>How the bundle is called in messages.</summary>
    public abstract string Name { get; }

    /// <summary>The files with their folders, parted by slashes, without those that only an operating system needs.</summary>
    public abstract IReadOnlyList<string> Names { get; }

    /// <summary>The one folder in which everything lies, with its slash, or "".</summary>
    public string Root => SingleRoot(Names);

    /// <summary>True when there is a file of this name, case counting.</summary>
    public bool Has(string name) => Names.Contains(name, StringComparer.Ordinal);

    /// <summary>The file of this name, whatever the case of its letters; null if there is none.</summary>
    public string? Find(string name) => Has(name) ? name : Names.FirstOrDefault(n => n.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Opens a file to be read once.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <param name="mostBytes">Bytes that may be read of it, where that is less than the limits of the bundle.</param>
    public abstract Stream Open(string name, long? mostBytes = null);

    /// <summary>Closes what was opened.</summary>
    public abstract void Dispose();

    /// <summary>True for files that operating systems put beside others.</summary>
    protected static bool IsLitter(string name) =>
        name.StartsWith("__MACOSX/", StringComparison.Ordinal) || FileOf(name).StartsWith("._", StringComparison.Ordinal)
        || FileOf(name) is ".DS_Store" or "Thumbs.db" or "desktop.ini";

    private static string FileOf(string name) => name[(name.LastIndexOf('/') + 1)..];

    private static string SingleRoot(IReadOnlyList<string> names)
    {
        if (names.Count == 0 || names.Contains(Description, StringComparer.OrdinalIgnoreCase))
            return "";
        var slash = names[0].IndexOf('/', StringComparison.Ordinal);
        var root = slash < 0 ? "" : names[0][..(slash + 1)];
        return root.Length > 0 && names.All(n => n.StartsWith(root, StringComparison.Ordinal)) ? root : "";
    }
}
