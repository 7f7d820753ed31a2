using Dapper;

namespace RangeMap.Store;

/// <summary>Small facts about a data folder: its name, whether its data are invented.</summary>
public sealed class Settings(Database database)
{
    /// <summary>Reads a fact, or null.</summary>
    public string? Read(string name)
    {
        using var connection = database.Connect();
        return connection.QuerySingleOrDefault<string>("SELECT value FROM setting WHERE name = @name", new { name });
    }

    /// <summary>Writes a fact.</summary>
    public void Write(string name, string value)
    {
        using var connection = database.Connect();
        connection.Execute(
            "INSERT INTO setting (name, value) VALUES (@name, @value) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
            new { name, value });
    }
}
