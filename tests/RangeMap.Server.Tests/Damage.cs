using Microsoft.Data.Sqlite;

namespace RangeMap.Server.Tests;

/// <summary>Breaks data on purpose.</summary>
internal static class Damage
{
    /// <summary>Cuts every packed cube of a data folder off within its first number.</summary>
    public static void Cubes(string folder)
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(folder, "rangemap.sqlite")};Pooling=False");
        connection.Open();
        using var cut = connection.CreateCommand();
        cut.CommandText = "UPDATE cube_segment SET data = x'FF'";
        Assert.NotEqual(0, cut.ExecuteNonQuery());
    }

    /// <summary>Asserts that a message has these words.</summary>
    public static void ShouldSay(this string message, string words) => Assert.Contains(words, message, StringComparison.OrdinalIgnoreCase);
}
