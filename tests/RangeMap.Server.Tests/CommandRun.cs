using System.Text.Json.Nodes;

namespace RangeMap.Server.Tests;

/// <summary>What a command said and how it ended.</summary>
internal sealed record CommandRun(int Exit, string Out, string Error)
{
    /// <summary>The one object that it wrote.</summary>
    public JsonNode Json => JsonNode.Parse(Out)!;

    /// <summary>One object for each line that it wrote.</summary>
    public IReadOnlyList<JsonNode> JsonLines => [.. Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonNode.Parse(line)!)];

    /// <summary>Runs a command in this process.</summary>
    public static Task<CommandRun> OfAsync(params string[] arguments) => OfAsync("", CancellationToken.None, arguments);

    /// <summary>Runs a command that reads what is typed.</summary>
    public static Task<CommandRun> TypedAsync(string typed, params string[] arguments) => OfAsync(typed, CancellationToken.None, arguments);

    /// <summary>Runs a command that may be stopped.</summary>
    public static async Task<CommandRun> OfAsync(string typed, CancellationToken stop, params string[] arguments)
    {
        using StringWriter output = new(), error = new();
        using var input = new StringReader(typed);
        var exit = await CommandLine.RunAsync(arguments, new(output, error, input, FixedClock.Winter2026), stop);
        return new(exit, output.ToString(), error.ToString());
    }

    /// <summary>Asserts that it failed with this exit code and said these words where errors are said.</summary>
    public void Failed(int exit, params string[] words)
    {
        Assert.True(exit == Exit, $"Exit code {Exit}; said: {Out}{Error}");
        Assert.All(words, word => Assert.Contains(word, Out + Error, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("   at RangeMap.", Out + Error, StringComparison.Ordinal);
    }
}
