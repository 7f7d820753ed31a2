namespace RangeMap.Server.Tests;

/// <summary>What messages must say.</summary>
internal static class Wording
{
    /// <summary>Asserts that a message has these words, in capitals or not.</summary>
    public static void ShouldSay(this string message, string words) => Assert.Contains(words, message, StringComparison.OrdinalIgnoreCase);
}
