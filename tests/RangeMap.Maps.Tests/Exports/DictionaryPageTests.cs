namespace RangeMap.Maps.Tests.Exports;

/// <summary>The page in docs says what the definitions say.</summary>
public sealed class DictionaryPageTests
{
    [Fact]
    public void ThePageInDocsIsAsTheDefinitionsMakeIt()
    {
        var root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "RangeMap.sln")))
            root = Path.GetDirectoryName(root)!;
        var page = Path.Combine(root, "docs", "data-dictionary.md");
        if (Environment.GetEnvironmentVariable("RANGEMAP_BLESS") == "1")
            File.WriteAllText(page, DictionaryPage.Write());
        Assert.Equal(DictionaryPage.Write(), File.ReadAllText(page));
    }
}
