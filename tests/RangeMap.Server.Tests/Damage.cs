using Microsoft.Data.Sqlite;

namespace RangeMap.Server.Tests;

/// <summary>Breaks data on purpose.</summary>
internal static class Damage
{
    /// <summary>Cuts every packed cube of a data folder off within its first number.</summary>
    public static void Cubes(string folder) => Execute(folder, "UPDATE cube_segment SET data = x'FF'");

    /// <summary>Makes every packed cube of a data folder an empty one, which is sound.</summary>
    public static void Mend(string folder) => Execute(folder, "UPDATE cube_segment SET data = x''");

    private static void Execute(string folder, string statement)
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(folder, "rangemap.sqlite")};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        // One of the two statements above, without any part from outside.
#pragma warning disable CA2100
        command.CommandText = statement;
#pragma warning restore CA2100
        Assert.NotEqual(0, command.ExecuteNonQuery());
    }
}
