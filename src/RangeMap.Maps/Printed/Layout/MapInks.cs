namespace RangeMap.Maps;

/// <summary>Colours of all that is not a class.</summary>
/// <param name="Land">Land of the islands.</param>
/// <param name="Near">Land of other countries; null to leave it white.</param>
/// <param name="Coast">The coast and borders.</param>
/// <param name="Grid">Lines of the grid.</param>
/// <param name="GridDashMm">Length of its dashes; 0 for whole lines.</param>
/// <param name="Letters">Its letters.</param>
internal sealed record MapInks(string Land, string? Near, string Coast, string Grid, double GridDashMm, string Letters)
{
    /// <summary>Titles, legend and front lines.</summary>
    public const string Text = "#000000";

    /// <summary>The source, and notes.</summary>
    public const string Quiet = "#333333";

    /// <summary>The paper.</summary>
    public const string Paper = Palette.LightPaper;

    private static readonly MapInks InColour = new("#f1eee6", "#f8f7f3", "#6f6b62", "#c9c5bb", 0, "#6b665c");
    private static readonly MapInks InBlack = new(Paper, null, "#000000", "#000000", 0.35, "#000000");

    /// <summary>The colours of an ink.</summary>
    public static MapInks Of(PrintInk ink) => ink == PrintInk.Black ? InBlack : InColour;
}
