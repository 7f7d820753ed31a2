using System.Globalization;
using System.Text;
using Dapper;

namespace RangeMap.Store.Tests;

/// <summary>Everything that a database says, as text: two equal dumps are two databases with the same content.</summary>
internal static class LogicalDump
{
    /// <summary>All tables but those left out, each row in the order of its columns.</summary>
    public static string Of(Database database, params string[] without)
    {
        using var connection = database.Connect();
        var dump = new StringBuilder();
        var objects = connection.Query<(string Name, string Type, string Sql)>("SELECT name, type, sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name").ToList();
        foreach (var (name, type, sql) in objects)
        {
            // These come when they are first needed, and say nothing that the tables do not.
            if (RecordSql.MakeLookupIndexes.Contains(name, StringComparison.Ordinal) && type == "index")
                continue;
            dump.AppendLine(sql);
            if (type != "table" || without.Contains(name))
                continue;
            foreach (IDictionary<string, object?> row in connection.Query($"SELECT * FROM {name} ORDER BY 1, 2").Cast<IDictionary<string, object?>>())
                dump.Append(name).Append(": ").AppendJoin('|', row.Values.Select(Text)).AppendLine();
        }

        return dump.ToString();
    }

    private static string Text(object? value) => value switch
    {
        null => "NULL",
        byte[] bytes => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(bytes)),
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };
}
