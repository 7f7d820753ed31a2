namespace RangeMap.TestKit;

/// <summary>A folder that is gone when the test is over.</summary>
public sealed class TemporaryFolder : IDisposable
{
    /// <summary>Where it is.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("rangemap-test-").FullName;

    /// <summary>The path of a file in it.</summary>
    public string File(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Writes a text file in it and gives its path.</summary>
    public string Write(string name, string text)
    {
        System.IO.File.WriteAllText(File(name), text);
        return File(name);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        try
        {
            Directory.Delete(Path, recursive: true);
        }
        catch (IOException)
        {
            // A pooled connection may hold the file a moment longer; the system clears its temporary folder.
        }
    }
}
