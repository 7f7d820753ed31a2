using System.Runtime.CompilerServices;
using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>Gives each distinct text of a table (persons, words) one number, old texts their old one.</summary>
internal sealed class Numbering(SqliteConnection connection, SqliteTransaction transaction, string find, string add)
{
    /// <summary>Texts remembered between rows; beyond this the memory starts afresh, and the table is asked again.</summary>
    private const int MostRemembered = 200_000;

    private const int RecentSlots = 1 << 12;

    private readonly Dictionary<string, long> _known = new(StringComparer.Ordinal);
    private readonly (string? Text, long Number)[] _recent = new (string?, long)[RecentSlots];

    public static Numbering OfPersons(SqliteConnection connection, SqliteTransaction transaction) =>
        new(connection, transaction, ImportSql.FindPerson, ImportSql.AddPerson);

    public static Numbering OfWords(SqliteConnection connection, SqliteTransaction transaction) =>
        new(connection, transaction, ImportSql.FindWord, ImportSql.AddWord);

    public long? Of(string? text)
    {
        if (string.IsNullOrEmpty(text))
            return null;
        // Rows say the same words over and over, and the rows of a visit stand together; equal texts of a file are mostly one string.
        ref var recent = ref _recent[RuntimeHelpers.GetHashCode(text) & (RecentSlots - 1)];
        if (!ReferenceEquals(text, recent.Text))
            recent = (text, NumberOf(text));
        return recent.Number;
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
