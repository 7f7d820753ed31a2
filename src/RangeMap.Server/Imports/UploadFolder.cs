using System.Security.Cryptography;
using System.Text.Json;

namespace RangeMap.Server;

/// <summary>
/// Keeps files that were sent until they are part of the data: each with a note beside it, so that nothing that a user
/// sent is lost when the server stops in between.
/// </summary>
public sealed class UploadFolder
{
    private const string NoteEnding = ".json", FileEnding = ".upload", PartEnding = ".part";
    private readonly string _path;
    private readonly long _mostBytes;

    /// <param name="dataPath">The data folder.</param>
    /// <param name="mostBytes">Longest file that is taken.</param>
    public UploadFolder(string dataPath, long mostBytes)
    {
        _path = Path.Combine(dataPath, "uploads");
        _mostBytes = mostBytes;
    }

    /// <summary>Longest file that is taken, in bytes.</summary>
    public long MostBytes => _mostBytes;

    /// <summary>Where the file of an upload lies.</summary>
    public string FileOf(Upload upload) => Path.Combine(_path, upload.Id + FileEnding);

    /// <summary>Refuses a file by the length that its sender states, before any of it is read.</summary>
    /// <param name="statedBytes">The length; null where it is not stated, and shows while the file is read.</param>
    /// <exception cref="UserException">It is longer than is taken.</exception>
    public void Admit(long? statedBytes)
    {
        if (statedBytes > _mostBytes)
            throw TooLong();
    }

    /// <summary>Takes a file in, straight to disk.</summary>
    /// <exception cref="UserException">It is longer than is taken, empty, or the disk is full; nothing of it is kept.</exception>
    public async Task<Upload> ReceiveAsync(Stream from, string fileName, string dataset, string by, DateTimeOffset now, CancellationToken cancel)
    {
        Directory.CreateDirectory(_path);
        var id = "u" + Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(8));
        var part = Path.Combine(_path, id + PartEnding);
        try
        {
            var bytes = await CopyAsync(from, part, cancel);
            var upload = new Upload { Id = id, FileName = NameOnly(fileName), Dataset = dataset, By = by, ReceivedAt = now, Bytes = bytes };
            await File.WriteAllTextAsync(Path.Combine(_path, id + NoteEnding), JsonSerializer.Serialize(UploadNote.Of(upload)), cancel);
            File.Move(part, FileOf(upload));
            return upload;
        }
        finally
        {
            File.Delete(part);
        }
    }

    /// <summary>Files whose import had not ended when the server stopped; half-sent ones are taken away.</summary>
    public IEnumerable<Upload> Left()
    {
        if (!Directory.Exists(_path))
            yield break;
        foreach (var part in Directory.EnumerateFiles(_path, "*" + PartEnding))
            File.Delete(part);
        foreach (var note in Directory.EnumerateFiles(_path, "*" + NoteEnding).Order(StringComparer.Ordinal))
        {
            var id = Path.GetFileNameWithoutExtension(note);
            if (File.Exists(Path.Combine(_path, id + FileEnding)) && UploadNote.TryRead(note) is { } read)
                yield return read.ToUpload(id);
            else
                File.Delete(note);
        }
    }

    /// <summary>Takes a file away.</summary>
    public void Remove(Upload upload)
    {
        File.Delete(FileOf(upload));
        File.Delete(Path.Combine(_path, upload.Id + NoteEnding));
    }

    private async Task<long> CopyAsync(Stream from, string path, CancellationToken cancel)
    {
        await using var to = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1 << 16, FileOptions.Asynchronous);
        var buffer = new byte[1 << 16];
        long bytes = 0;
        for (int read; (read = await from.ReadAsync(buffer, cancel)) > 0;)
        {
            if ((bytes += read) > _mostBytes)
                throw TooLong();
            await to.WriteAsync(buffer.AsMemory(0, read), cancel);
        }

        return bytes > 0 ? bytes : throw new UserException("The file is empty.", "file", "Is it the right file?");
    }

    private UserException TooLong() => new(
        FormattableString.Invariant($"The file is longer than the {_mostBytes / (1 << 20):N0} MB that this server takes."), "file",
        "Send it compressed with gzip or in parts, or let whoever runs the server import it with rangemap import.", StatusCodes.Status413PayloadTooLarge);

    /// <summary>The last part of a name, whatever system it was written on, without characters that no name should hold.</summary>
    private static string NameOnly(string name)
    {
        var last = name[(name.LastIndexOfAny(['/', '\\']) + 1)..];
        var clean = new string([.. last.Where(letter => !char.IsControl(letter))]).Trim();
        return clean.Length == 0 ? "unnamed" : clean[..Math.Min(clean.Length, 200)];
    }

    private sealed record UploadNote(string FileName, string Dataset, string By, DateTimeOffset ReceivedAt, long Bytes)
    {
        public static UploadNote Of(Upload upload) => new(upload.FileName, upload.Dataset, upload.By, upload.ReceivedAt, upload.Bytes);

        public static UploadNote? TryRead(string path)
        {
            try
            {
                return JsonSerializer.Deserialize<UploadNote>(File.ReadAllText(path));
            }
            catch (JsonException)
            {
                return null;
            }
        }

        public Upload ToUpload(string id) => new() { Id = id, FileName = FileName, Dataset = Dataset, By = By, ReceivedAt = ReceivedAt, Bytes = Bytes };
    }
}
