using System.Security.Cryptography;
using System.Text;

namespace RangeMap.Server;

/// <summary>
/// Keeps made exports for a while, so that a download that broke off goes on where it stopped. The name of a file follows from the question and
/// the state of the data; when all together grow too long, those that were asked for longest ago go.
/// </summary>
internal sealed class ExportFolder(string dataFolder, TimeProvider clock, long mostBytes = 2L << 30) : IDisposable
{
    private const int MadeAtOnce = 2;

    private readonly string _folder = Path.Combine(dataFolder, "exports");
    private readonly SemaphoreSlim _making = new(MadeAtOnce);
    private long _made;

    /// <summary>The file of a question; made where it is absent.</summary>
    /// <param name="key">All that the content follows from.</param>
    /// <param name="ending">Ending of its name.</param>
    /// <param name="make">Writes it to a new file.</param>
    /// <param name="cancel">Stops the making.</param>
    /// <returns>Its path, and a tag that is the same for the same content.</returns>
    public async Task<(string Path, string Tag)> GetOrMakeAsync(string key, string ending, Func<string, Task> make, CancellationToken cancel)
    {
        var tag = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key)))[..32];
        var path = Path.Combine(_folder, tag + ending);
        await _making.WaitAsync(cancel);
        try
        {
            if (!File.Exists(path))
                await MakeAsync(path, make);
            File.SetLastWriteTimeUtc(path, clock.GetUtcNow().UtcDateTime);
        }
        finally
        {
            _making.Release();
        }

        return (path, tag);
    }

    /// <inheritdoc/>
    public void Dispose() => _making.Dispose();

    private async Task MakeAsync(string path, Func<string, Task> make)
    {
        Directory.CreateDirectory(_folder);
        var unfinished = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{path}.{Environment.ProcessId}-{Interlocked.Increment(ref _made)}.part");
        try
        {
            await make(unfinished);
            File.Move(unfinished, path, overwrite: true);
        }
        finally
        {
            File.Delete(unfinished);
        }

        Shorten(path);
    }

    /// <summary>Removes the oldest files beyond the room that there is; one that is being sent stays readable until it is sent.</summary>
    private void Shorten(string keep)
    {
        var left = mostBytes;
        foreach (var file in new DirectoryInfo(_folder).EnumerateFiles().Where(file => !file.Name.EndsWith(".part", StringComparison.Ordinal)).OrderByDescending(file => file.FullName == keep).ThenByDescending(file => file.LastWriteTimeUtc))
        {
            left -= file.Length;
            if (left < 0 && file.FullName != keep)
                file.Delete();
        }
    }
}
