namespace RangeMap.Server;

/// <summary>Says of a text in an answer which words it may be, so that the description of the interface lists them.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class WordsAttribute(params string[] words) : Attribute
{
    /// <summary>The words.</summary>
    public IReadOnlyList<string> Words { get; } = words;
}
