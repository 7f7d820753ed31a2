namespace RangeMap.Server.Tests.Standards;

/// <summary>
/// The official schema files of the standards, which are no part of this project: their licences differ, and so would a copy, in time, from its source. They lie in the
/// folder that RANGEMAP_SCHEMAS names, or else in a folder "schemas" beside the project or one level below a neighbour of it. Where there is none, tests that need them are skipped.
/// </summary>
internal static class SchemaFolder
{
    /// <summary>One of the parts, by which the folder is known.</summary>
    private const string Mark = "ogcapi-features-1";

    private static readonly Lazy<string?> Found = new(Find);

    /// <summary>A file of the folder.</summary>
    public static string File(string name)
    {
        if (Found.Value is not { } folder)
            Assert.Skip("The official schemas are not on this machine: set RANGEMAP_SCHEMAS to a folder that holds ogcapi-features-1, ogcapi-tiles-1, tms-2.0, tilejson-3.0.0, geoparquet-1.1.0 and dwc-text.");
        return Path.Combine(Found.Value, name);
    }

    private static string? Find()
    {
        if (Environment.GetEnvironmentVariable("RANGEMAP_SCHEMAS") is { Length: > 0 } named)
            return Directory.Exists(Path.Combine(named, Mark)) ? named : throw new DirectoryNotFoundException($"RANGEMAP_SCHEMAS names {named}, which holds no {Mark}.");
        var root = AppContext.BaseDirectory;
        while (!System.IO.File.Exists(Path.Combine(root, "RangeMap.sln")))
            root = Path.GetDirectoryName(root)!;
        var beside = Path.GetDirectoryName(root)!;
        return Directory.EnumerateDirectories(beside).Prepend(beside).Select(folder => Path.Combine(folder, "schemas")).FirstOrDefault(folder => Directory.Exists(Path.Combine(folder, Mark)));
    }
}
