namespace RangeMap.Records;

/// <summary>
/// Numbers the names of recorders as written; case and white space do not count, and a party is a name of its own. Names that mean
/// nobody in particular have none.
/// </summary>
internal sealed class RecorderNames
{
    /// <summary>The number of no name, and of names such as "anonymous".</summary>
    public const int Nobody = 0;

    /// <summary>More names than a country has recorders; any further one counts as nobody, so that no file can fill the memory.</summary>
    private const int MostNames = 500_000;

    private const int RecentSlotBits = 12;

    private static readonly HashSet<string> NobodyNames = new(StringComparer.OrdinalIgnoreCase)
    {
        "anon", "anon.", "anonymous", "unknown", "not known", "unknown recorder", "unknown observer", "not recorded", "not stated", "various", "various recorders",
        "several", "many", "others", "et al", "et al.", "n/a", "none", "no name", "nobody", "withheld", "name withheld", "recorder", "observer", "public",
        "member of the public", "members of the public", "volunteer", "volunteers", "visitor", "me", "-", "?", "x", "unspecified", "see comments",
    };

    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _plain = new(StringComparer.OrdinalIgnoreCase);
    private readonly ReferenceMemo<int> _recent = new(RecentSlotBits);

    /// <summary>The number of a name, from 1, or <see cref="Nobody"/>.</summary>
    public int NumberOf(string? written)
    {
        if (written is null)
            return Nobody;
        if (_recent.TryGet(written, null, out var number))
            return number;
        if (!_numbers.TryGetValue(written, out number))
        {
            if (_numbers.Count == MostNames)
                return Nobody;
            _numbers.Add(written, number = NumberOfPlain(NameText.Normalise(written)));
        }

        _recent.Set(written, null, number);
        return number;
    }

    /// <summary>True for a name that means nobody in particular.</summary>
    public static bool IsNobody(string? name) => string.IsNullOrWhiteSpace(name) || NobodyNames.Contains(name.Trim());

    private int NumberOfPlain(string name)
    {
        if (IsNobody(name))
            return Nobody;
        if (!_plain.TryGetValue(name, out var number))
            _plain.Add(name, number = _plain.Count + 1);
        return number;
    }
}
