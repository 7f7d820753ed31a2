using System.Text.Json;

namespace RangeMap.Server;

/// <summary>The columns of an imported file and what stood between them, as kept with its batch.</summary>
/// <param name="Columns">The headers, in order.</param>
/// <param name="Separator">The character between fields.</param>
public sealed record FileHeader(IReadOnlyList<string> Columns, char Separator)
{
    /// <summary>The stored form.</summary>
    public string ToJson() => JsonSerializer.Serialize(this);

    /// <summary>Reads the stored form.</summary>
    public static FileHeader FromJson(string json) => JsonSerializer.Deserialize<FileHeader>(json)!;
}
