using System.Runtime.CompilerServices;

namespace RangeMap.Maps.Tests;

/// <summary>Compares with a kept file; with RANGEMAP_BLESS=1 in the environment it keeps the new text instead.</summary>
internal static class Golden
{
    public static void Compare(string name, string text, [CallerFilePath] string caller = "")
    {
        var path = Path.Combine(Path.GetDirectoryName(caller)!, "Golden", name);
        if (Environment.GetEnvironmentVariable("RANGEMAP_BLESS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, text + "\n");
        }

        Assert.Equal(File.ReadAllText(path).TrimEnd('\n'), text);
    }
}
