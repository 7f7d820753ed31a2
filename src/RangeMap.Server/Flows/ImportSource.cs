using System.Security.Cryptography;
using System.Text;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>A file to import, or a folder with the files of an archive, open for reading and known by the hash of its bytes.</summary>
internal sealed class ImportSource : IAsyncDisposable
{
    private const int HashBufferBytes = 1 << 18;

    private readonly FileStream? _file;
    private readonly string _path;

    private ImportSource(FileStream? file, string path)
    {
        _file = file;
        _path = path;
    }

    /// <summary>Share of the file that was read; 0 for a folder, where it is not known.</summary>
    public double FractionRead => _file is { Length: > 0 } ? Math.Min(1, _file.Position / (double)_file.Length) : 0;

    /// <summary>Opens a file or folder.</summary>
    /// <exception cref="UserException">It cannot be read, or is a pipe.</exception>
    public static ImportSource Open(string path) => new(Directory.Exists(path) ? null : OpenFile(path), path);

    /// <summary>About how many rows a text file has, by the length of its first lines; 0 for anything else.</summary>
    public long ExpectedRows()
    {
        if (_file is null)
            return 0;
        var beginning = new byte[1 << 16];
        var read = _file.ReadAtLeast(beginning, beginning.Length, throwOnEndOfStream: false);
        _file.Position = 0;
        var text = beginning.AsSpan(0, read);
        var lines = text.Count((byte)'\n');
        return lines == 0 || text.Contains((byte)0) || text.StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]) ? 0 : _file.Length / Math.Max(1, read / lines);
    }

    /// <summary>A reader at the header.</summary>
    /// <exception cref="ImportProblemException">The file as a whole cannot be read.</exception>
    public RecordReader Read(TaxonList taxa, ImportOptions options) =>
        _file is null ? RecordReader.OpenFolder(_path, taxa, options) : RecordReader.Open(_file, taxa, options);

    /// <summary>SHA-256 of the file, or of the names and bytes of all files of a folder, hexadecimal; to be asked once the rows were read.</summary>
    public string Hash(CancellationToken cancel)
    {
        if (_file is null)
            return HashOfFolder(_path, cancel);
        _file.Position = 0;
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Append(hash, _file, cancel);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _file?.DisposeAsync() ?? ValueTask.CompletedTask;

    private static string HashOfFolder(string path, CancellationToken cancel)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var name in Directory.EnumerateFiles(path).Order(StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(Path.GetFileName(name) + "\0"));
            using var file = OpenFile(name);
            using var ofFile = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
            Append(ofFile, file, cancel);
            hash.AppendData(ofFile.GetHashAndReset());
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static void Append(IncrementalHash hash, FileStream file, CancellationToken cancel)
    {
        var buffer = new byte[HashBufferBytes];
        for (int read; (read = file.Read(buffer)) > 0;)
        {
            cancel.ThrowIfCancellationRequested();
            hash.AppendData(buffer, 0, read);
        }
    }

    private static FileStream OpenFile(string path)
    {
        FileStream file;
        try
        {
            file = new(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, FileOptions.SequentialScan | FileOptions.Asynchronous);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new UserException($"The file cannot be read: {error.Message}", path, "Check its name and that you may read it.");
        }

        if (file.CanSeek)
            return file;
        file.Dispose();
        throw new UserException("This is a pipe or device, which cannot be read twice.", path, "Save the table as a file and import that.");
    }
}
