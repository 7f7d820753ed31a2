namespace RangeMap.Change.Tests.Trends;

/// <summary>The invented worlds by which the measures are judged, each with one thing that may mislead them.</summary>
internal static class Scenarios
{
    internal static readonly SimulatedSurvey Same = new();

    internal static readonly SimulatedSurvey TwiceTheVisits = new() { After = new() { Visits = 16 } };

    internal static readonly SimulatedSurvey LargeGroup = new() { Taxa = 240, After = new() { Visits = 16 } };

    internal static readonly SimulatedSurvey WiderSearch = new() { Before = new() { Coverage = 0.5 }, After = new() { Visits = 12, Coverage = 0.95 } };

    internal static readonly SimulatedSurvey OtherSquares = new() { After = new() { Visits = 16 }, OtherSquares = true };

    internal static readonly SimulatedSurvey ShorterLists = new() { After = new() { Visits = 16, Notes = 0.5, Thorough = 0.15 } };

    internal static readonly SimulatedSurvey LongerLists = new() { Before = new() { Notes = 0.4, Thorough = 0.15 }, After = new() { Visits = 16, Notes = 0.05, Thorough = 0.6 } };

    internal static readonly SimulatedSurvey Decline = new() { After = new() { Visits = 16 }, Declining = 12, Loss = 0.3 };

    /// <summary>The worlds without change, by name.</summary>
    internal static readonly (string Name, SimulatedSurvey World)[] WithoutChange =
    [
        ("same effort", Same), ("twice the visits", TwiceTheVisits), ("twice the visits, 240 taxa", LargeGroup), ("wider search", WiderSearch), ("twice the visits, to other squares", OtherSquares), ("shorter lists", ShorterLists), ("longer lists", LongerLists),
    ];
}
