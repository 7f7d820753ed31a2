namespace RangeMap.Server;

/// <summary>Names of the settings that a data folder keeps.</summary>
internal static class SettingNames
{
    public const string Title = "title";
    public const string Demo = "demo";
    public const string Notice = "notice";

    /// <summary>One with a history: the periods that maps begin with.</summary>
    public const string Periods = "periods";
}
