using System.IO.Compression;
using System.Text;

namespace RangeMap.Records.Tests;

/// <summary>Packs files for tests.</summary>
internal static class SomeZip
{
    public static MemoryStream Of(params (string Name, string Content)[] entries) =>
        OfBytes([.. entries.Select(e => (e.Name, Encoding.UTF8.GetBytes(e.Content)))]);

    public static MemoryStream OfBytes(params (string Name, byte[] Content)[] entries)
    {
        var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in entries)
            {
                using var entry = zip.CreateEntry(name).Open();
                entry.Write(content);
            }
        }

        stream.Position = 0;
        return stream;
    }

    public static byte[] Gzip(byte[] content)
    {
        using var stream = new MemoryStream();
        using (var gzip = new GZipStream(stream, CompressionLevel.Optimal, leaveOpen: true))
            gzip.Write(content);
        return stream.ToArray();
    }

    public static byte[] Gzip(string content) => Gzip(Encoding.UTF8.GetBytes(content));
}
