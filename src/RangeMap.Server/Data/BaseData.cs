using System.Reflection;

namespace RangeMap.Server;

/// <summary>Files of gis-data that are built into the program.</summary>
internal static class BaseData
{
    /// <summary>Opens a file by its name.</summary>
    public static Stream Open(string name) =>
        Assembly.GetExecutingAssembly().GetManifestResourceStream("gis-data/" + name)
        ?? throw new InvalidOperationException($"The program was built without gis-data/{name}.");
}
