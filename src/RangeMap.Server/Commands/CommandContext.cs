using System.Text.Encodings.Web;
using System.Text.Json;

namespace RangeMap.Server;

/// <summary>What a command works with besides its arguments; tests hand in their own.</summary>
/// <param name="Out">Where results go.</param>
/// <param name="Error">Where errors and progress go.</param>
/// <param name="In">Where a dash reads from.</param>
/// <param name="Clock">Tells the time.</param>
public sealed record CommandContext(TextWriter Out, TextWriter Error, TextReader In, TimeProvider Clock)
{
    /// <summary>How machine output is written: camelCase, one object a line, every member on every line: null where there is no value.</summary>
    public static JsonSerializerOptions Json { get; } = new(JsonSerializerDefaults.Web)
    {
        // The output goes to programs, not into a page: letters with accents stay readable.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes one object as a line of JSON.</summary>
    public void WriteJson<T>(T value) => Out.WriteLine(JsonSerializer.Serialize(value, Json));

    /// <summary>Writes what a command makes to a file, or to where results go.</summary>
    /// <param name="file">The file; null for none.</param>
    /// <param name="write">Writes to a stream, which is not closed.</param>
    internal async Task DeliverAsync(string? file, Func<Stream, Task> write)
    {
        using var bytes = new MemoryStream();
        await write(bytes);
        if (file is not null)
            await File.WriteAllBytesAsync(file, bytes.ToArray());
        else
            await Out.WriteAsync(System.Text.Encoding.UTF8.GetString(bytes.ToArray()));
    }
}
