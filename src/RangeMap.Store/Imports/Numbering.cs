using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>Gives each distinct text of a table (persons, words) one number, old texts their old one.</summary>
internal sealed class Numbering(SqliteConnection connection, SqliteTransaction transaction, string find, string add)
{
    /// <summary>Texts remembered between rows; beyond this the memory starts afresh, and the table is asked again.</summary>
    private const int MostRemembered = 200_000;

    private readonly Dictionary<string, long> _known = new(StringComparer.Ordinal);
    private string? _last;
    private long _lastNumber;

    public static Numbering OfPersons(SqliteConnection connection, SqliteTransaction transaction) =>
        new(connection, transaction, ImportSql.FindPerson, ImportSql.AddPerson);

    public static Numbering OfWords(SqliteConnection connection, SqliteTransaction transaction) =>
        new(connection, transaction, ImportSql.FindWord, ImportSql.AddWord);

    public long? Of(string? text)
    {
        if (string.IsNullOrEmpty(text))
            return null;
        // The rows of a visit mostly stand together.
        if (!ReferenceEquals(text, _last))
            (_last, _lastNumber) = (text, NumberOf(text));
        return _lastNumber;
    }

    private long NumberOf(string text)
    {
        if (_known.TryGetValue(text, out var number))
            return number;
        if (_known.Count >= MostRemembered)
            _known.Clear();
        number = connection.QuerySingleOrDefault<long?>(find, new { text }, transaction)
            ?? connection.ExecuteScalar<long>(add, new { text }, transaction);
        _known.Add(text, number);
        return number;
    }
}
