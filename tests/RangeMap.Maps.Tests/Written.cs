using System.Text;

namespace RangeMap.Maps.Tests;

/// <summary>What a writer puts on a stream.</summary>
internal static class Written
{
    public static async Task<byte[]> BytesAsync(Func<Stream, Task> write)
    {
        using var stream = new MemoryStream();
        await write(stream);
        Assert.True(stream.CanWrite, "The stream must stay open.");
        return stream.ToArray();
    }

    public static async Task<string> TextAsync(Func<Stream, Task> write) => Encoding.UTF8.GetString(await BytesAsync(write));
}
