using System.IO.Compression;
using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>The entries of a zip file, with every name and size checked before anything is unpacked.</summary>
internal sealed class ZipBundle : FileBundle
{
    private readonly ZipArchive _zip;
    private readonly FileLimits _limits;
    private readonly Dictionary<string, ZipArchiveEntry> _entries = new(StringComparer.Ordinal);

    private ZipBundle(ZipArchive zip, FileLimits limits)
    {
        _zip = zip;
        _limits = limits;
    }

    /// <inheritdoc/>
    public override string Name => "the zip file";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Names => [.. _entries.Keys];

    /// <summary>Opens a zip file.</summary>
    /// <param name="stream">From its beginning; must be able to seek; not closed.</param>
    /// <param name="limits">How much it may hold.</param>
    /// <exception cref="ImportProblemException">It is damaged, too large, or an entry's name or form is not allowed.</exception>
    public static ZipBundle Open(Stream stream, FileLimits limits)
    {
        ZipDirectory.Check(stream, limits);
        ZipBundle? bundle = null;
        try
        {
            bundle = new ZipBundle(new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true), limits);
            bundle.TakeEntries();
            return bundle;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            bundle?.Dispose();
            if (e is ImportProblemException)
                throw;
            throw ContainerProblem.Damaged("The zip file", "Its list of entries cannot be read.");
        }
    }

    /// <inheritdoc/>
    public override Stream Open(string name, long? mostBytes = null)
    {
        var entry = _entries[name];
        try
        {
            return new LimitedStream(entry.Open(), new(name, entry.CompressedLength, entry.Length, entry.Crc32), _limits, mostBytes);
        }
        catch (Exception e) when (e is InvalidDataException or NotSupportedException or IOException)
        {
            throw ContainerProblem.Damaged(name, "It cannot be unpacked, or is packed in a way that is not known.");
        }
    }

    /// <inheritdoc/>
    public override void Dispose() => _zip.Dispose();

    private void TakeEntries()
    {
        if (_zip.Entries.Count > _limits.Entries)
            throw ContainerProblem.Of(Invariant($"The zip file has {_zip.Entries.Count:N0} entries; at most {_limits.Entries:N0} are read."), "zip file", "Pack the table alone.");
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var entry in _zip.Entries)
        {
            var name = entry.FullName.Replace('\\', '/');
            EntryName.Check(name);
            if (!seen.Add(name))
                throw ContainerProblem.Of($"The zip file holds \"{name}\" twice.", name, "Pack it again, each file once.");
            if (name.EndsWith('/') || IsLitter(name))
                continue;
            if (entry.IsEncrypted)
                throw ContainerProblem.Of($"\"{name}\" is protected by a password.", name, "Pack it again without a password.");
            _entries.Add(name, entry);
            RefuseNested(name);
        }
    }

    private void RefuseNested(string name)
    {
        Span<byte> first = stackalloc byte[4];
        using var stream = Open(name);
        var count = stream.ReadAtLeast(first, first.Length, throwOnEndOfStream: false);
        if (FileSignature.Of(first[..count], out _, out _) is FileForm.Zip or FileForm.Gzip)
            throw ContainerProblem.Of($"The zip file holds another packed file, \"{name}\".", name, "Unpack it and import the inner file.");
    }
}
