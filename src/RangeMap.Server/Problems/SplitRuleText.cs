using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Reads a rule of a split: <c>PART: squares=NZ NY25; from=2005-01-01; to=2010-12-31; stage=queen; sex=female</c>.</summary>
internal static class SplitRuleText
{
    /// <summary>Reads a rule.</summary>
    /// <exception cref="UserException">A condition is not understood.</exception>
    public static SplitRule Parse(string text)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        var part = (colon < 0 ? text : text[..colon]).Trim();
        if (part.Length == 0)
            throw Refuse(text, "It names no part.");
        var rule = new SplitRule(part);
        foreach (var condition in colon < 0 ? [] : text[(colon + 1)..].Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            rule = With(rule, condition, text);
        return rule;
    }

    private static SplitRule With(SplitRule rule, string condition, string text) => condition.Split('=', 2, StringSplitOptions.TrimEntries) switch
    {
        ["squares", { Length: > 0 } squares] => rule with { Within = [.. squares.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Ask.Square)] },
        ["from", var day] => rule with { From = RecordAsk.Day(day, "--rule") },
        ["to", var day] => rule with { To = RecordAsk.Day(day, "--rule") },
        ["stage", { Length: > 0 } stage] => rule with { Stage = stage },
        ["sex", { Length: > 0 } sex] => rule with { Sex = sex },
        _ => throw Refuse(text, $"The condition '{condition}' is not understood."),
    };

    private static UserException Refuse(string rule, string why) => new(
        $"The rule '{rule}' cannot be used. {why}", "--rule",
        "Write PART: squares=NZ NY25; from=2005-01-01; to=2010-12-31; stage=queen; sex=female, with as many conditions as you need.") { IsArgument = true };
}
