namespace RangeMap.Store;

internal static class SettingSql
{
    public const string Read = "SELECT value FROM setting WHERE name = @name";

    public const string Write = "INSERT INTO setting (name, value) VALUES (@name, @value) ON CONFLICT (name) DO UPDATE SET value = excluded.value";
}
