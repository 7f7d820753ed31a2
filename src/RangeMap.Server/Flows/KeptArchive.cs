using System.IO.Compression;

namespace RangeMap.Server;

/// <summary>
/// Keeps an archive whole whose tables are not all read, under the hash of its bytes: nothing that was sent is lost, and the
/// same archive sent again is kept once.
/// </summary>
internal static class KeptArchive
{
    private const string Folder = "kept", Part = ".part";

    /// <summary>Keeps the archive.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="path">The file, or the folder that is packed.</param>
    /// <param name="hash">Its hash, as the import has it.</param>
    /// <param name="cancel">Stops the copy.</param>
    /// <returns>Where it is kept, beneath the data folder.</returns>
    public static async Task<string> KeepAsync(DataFolder folder, string path, string hash, CancellationToken cancel)
    {
        var name = Path.Combine(Folder, hash + ".zip");
        var target = Path.Combine(folder.Path, name);
        if (File.Exists(target))
            return name;
        Directory.CreateDirectory(Path.Combine(folder.Path, Folder));
        try
        {
            if (Directory.Exists(path))
                await ZipFile.CreateFromDirectoryAsync(path, target + Part, cancel);
            else
                await CopyAsync(path, target + Part, cancel);
            File.Move(target + Part, target, overwrite: true);
        }
        finally
        {
            File.Delete(target + Part);
        }

        return name;
    }

    private static async Task CopyAsync(string path, string target, CancellationToken cancel)
    {
        await using var from = File.OpenRead(path);
        await using var to = File.Create(target);
        await from.CopyToAsync(to, cancel);
    }
}
