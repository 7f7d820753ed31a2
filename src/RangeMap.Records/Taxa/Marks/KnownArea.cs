namespace RangeMap.Records;

/// <summary>Where a taxon is known from, as names of regions: "Westland; Southland", or with exceptions "Mainland; not Far Isle".</summary>
/// <param name="Within">It is known from these; none for everywhere.</param>
/// <param name="NotIn">It is not known from these.</param>
public sealed record KnownArea(IReadOnlyList<string> Within, IReadOnlyList<string> NotIn)
{
    private const string Not = "not ";

    /// <summary>Known from everywhere, as far as the list says.</summary>
    public static KnownArea Everywhere { get; } = new([], []);

    /// <summary>True when the list says nothing.</summary>
    public bool IsEverywhere => Within.Count == 0 && NotIn.Count == 0;

    /// <summary>Reads the written form.</summary>
    public static KnownArea Parse(string text)
    {
        var names = text.Split([';', '|'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return new(
            [.. names.Where(n => !IsExcepted(n))],
            [.. names.Where(IsExcepted).Select(n => n[Not.Length..].Trim())]);
    }

    /// <summary>The written form, which reads back as the same.</summary>
    public override string ToString() => string.Join("; ", Within.Concat(NotIn.Select(n => Not + n)));

    private static bool IsExcepted(string name) => name.StartsWith(Not, StringComparison.OrdinalIgnoreCase);
}
