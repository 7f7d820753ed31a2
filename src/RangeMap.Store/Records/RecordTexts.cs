using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>
/// The texts that records point to by number: data sets, people and words, each looked up once while one question is answered. A bounded number is
/// kept, because a scheme may name a million sites.
/// </summary>
internal sealed class RecordTexts
{
    private const int MostKept = 200_000;

    private readonly Dictionary<long, string?> _datasets = [], _people = [], _words = [];

    /// <summary>The identifier of a data set.</summary>
    public string Dataset(SqliteConnection connection, long number) => Text(_datasets, RecordSql.DatasetOfNumber, connection, number) ?? "";

    /// <summary>A person's name; null for no number.</summary>
    public string? Person(SqliteConnection connection, long? number) => number is { } known ? Text(_people, RecordSql.PersonOfNumber, connection, known) : null;

    /// <summary>A word; null for no number.</summary>
    public string? Word(SqliteConnection connection, long? number) => number is { } known ? Text(_words, RecordSql.WordOfNumber, connection, known) : null;

    private static string? Text(Dictionary<long, string?> kept, string sql, SqliteConnection connection, long number)
    {
        if (kept.TryGetValue(number, out var text))
            return text;
        if (kept.Count >= MostKept)
            kept.Clear();
        return kept[number] = connection.QuerySingleOrDefault<string>(sql, new { Number = number });
    }
}
