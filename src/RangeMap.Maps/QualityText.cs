using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>A quality as questions and data name it.</summary>
internal static class QualityText
{
    /// <summary>usable, confirmed or all.</summary>
    public static string Of(Quality quality) => quality switch
    {
        Quality.Usable => "usable",
        Quality.Confirmed => "confirmed",
        Quality.All => "all",
        _ => throw new ArgumentOutOfRangeException(nameof(quality), quality, "This is no quality in use."),
    };
}
