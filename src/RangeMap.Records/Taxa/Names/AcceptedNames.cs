namespace RangeMap.Records;

/// <summary>Names as files write them that a person accepted once for a taxon of the list. Case and white space do not count.</summary>
public sealed class AcceptedNames
{
    private readonly Dictionary<string, string> _taxonIds = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Takes the names; of two that are the same the later counts.</summary>
    /// <param name="names">Name as written, with the taxonID that it stands for.</param>
    public AcceptedNames(IEnumerable<KeyValuePair<string, string>> names)
    {
        foreach (var (name, id) in names)
            _taxonIds[NameText.Normalise(name)] = id;
    }

    /// <summary>No names.</summary>
    public static AcceptedNames None { get; } = new([]);

    /// <summary>A name as it is kept: composed characters, single spaces, none at the ends.</summary>
    public static string Plain(string name) => NameText.Normalise(name);

    /// <summary>The taxonID accepted for a name with single spaces; null if there is none.</summary>
    internal string? Find(string name) => _taxonIds.GetValueOrDefault(name);
}
