namespace RangeMap.Records;

/// <summary>Names of files inside a container. Nothing is ever unpacked to disk; a name that points outside is a sign of harm meant all the same.</summary>
internal static class EntryName
{
    private const int LongestName = 1_000;

    /// <summary>Refuses absolute names, drives, ways up, and characters that no name has.</summary>
    /// <param name="name">With its folders, parted by slashes.</param>
    /// <exception cref="ImportProblemException">The name is not allowed.</exception>
    public static void Check(string name)
    {
        if (name.Length is 0 or > LongestName || name.Any(char.IsControl))
            throw Problem("An entry has no name, or one that is too long or holds control characters.", Shown(name));
        if (name[0] == '/' || (name.Length > 1 && name[1] == ':') || name.Split('/').Contains(".."))
            throw Problem($"The entry \"{Shown(name)}\" points outside the file.", Shown(name));
    }

    private static string Shown(string name) =>
        name.Length == 0 ? "entry without a name" : new([.. name.Take(100).Select(c => char.IsControl(c) ? '\uFFFD' : c)]);

    private static ImportProblemException Problem(string what, string where) =>
        ContainerProblem.Of(what, where, "Ask the sender for a file made by an ordinary packing program.");
}
