namespace RangeMap.Store;

internal static class SettingHistorySql
{
    public const string Read = "SELECT number, value, made_at AS MadeAt, made_by AS MadeBy, reason FROM setting_change WHERE name = @name ORDER BY number DESC";

    public const string Newest = "SELECT MAX(number) FROM setting_change WHERE name = @name";

    public const string Add = "INSERT INTO setting_change (name, value, made_at, made_by, reason) VALUES (@name, @value, @at, @by, @reason)";
}
