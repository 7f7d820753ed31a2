using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>A folder that holds one server's data.</summary>
public sealed class DataFolder
{
    private DataFolder(string path, Database database) => (Path, Database) = (path, database);

    /// <summary>The folder where none is named.</summary>
    public const string DefaultPath = "rangemap-data";

    /// <summary>The folder of the demo where none is named, so that it never mixes with real data.</summary>
    public const string DefaultDemoPath = "rangemap-demo";

    /// <summary>The folder.</summary>
    public string Path { get; }

    /// <summary>Its database.</summary>
    public Database Database { get; }

    /// <summary>True when the folder holds a database already.</summary>
    public static bool Exists(string path) => File.Exists(DatabaseFile(path));

    /// <summary>Opens a folder that holds data already.</summary>
    /// <exception cref="UserException">It does not, or cannot be used.</exception>
    public static DataFolder OpenExisting(string path) => Exists(path)
        ? Open(path)
        : throw new UserException("There is no data folder here yet.", path, "Make one with rangemap taxa and rangemap import, or try rangemap demo.");

    /// <summary>Opens a folder, making it and its database where they are absent.</summary>
    /// <exception cref="UserException">The folder cannot be made or used.</exception>
    public static DataFolder Open(string path)
    {
        try
        {
            Directory.CreateDirectory(path);
            return new(path, Database.Open(DatabaseFile(path)));
        }
        catch (StoreException problem)
        {
            throw new UserException(problem.Message, path, problem.Mend);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new UserException($"The data folder cannot be used: {error.Message}", path, "Name a folder that you may write to with --data.");
        }
    }

    private static string DatabaseFile(string path) => System.IO.Path.Combine(path, "rangemap.sqlite");
}
