using Dapper;

namespace RangeMap.Store;

/// <summary>Small facts about a data folder: its name, whether its data are invented.</summary>
public sealed class Settings(Database database)
{
    /// <summary>Reads a fact, or null.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public string? Read(string name) => database.Use(connection =>
        connection.QuerySingleOrDefault<string>(SettingSql.Read, new { name }));

    /// <summary>Writes a fact.</summary>
    /// <exception cref="StoreException">The database cannot be written to.</exception>
    public void Write(string name, string value) => database.Use(connection => connection.Execute(SettingSql.Write, new { name, value }));
}
