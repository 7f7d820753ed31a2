using System.IO.Compression;
using System.IO.Hashing;

namespace RangeMap.Server;

/// <summary>
/// A tile that was drawn, in every content coding that clients take, each packed when it is first asked for and then kept. Its tag follows from its bytes alone, so that
/// equal tags mean equal bytes (a strong validator after RFC 9110, 8.8.1): a client keeps its tile across imports that do not touch it. Never changes.
/// </summary>
internal sealed class ReadyTile
{
    /// <summary>Below this packing gains nothing: the tile fits into one packet either way.</summary>
    private const int LeastPacked = 200;

    private readonly TileBody _plain;
    private readonly Lazy<TileBody> _gzip;
    private readonly Lazy<TileBody> _brotli;

    /// <summary>Takes the bytes of a tile, which nobody may change afterwards.</summary>
    public ReadyTile(byte[] bytes)
    {
        var tag = XxHash128.HashToUInt128(bytes).ToString("x32", System.Globalization.CultureInfo.InvariantCulture);
        _plain = new(bytes, $"\"{tag}\"", null);
        // Two threads may pack at once, to equal bytes, of which one array is kept.
        _gzip = new(() => Packed($"\"{tag}-gzip\"", "gzip", to => new GZipStream(to, CompressionLevel.Optimal, leaveOpen: true)), LazyThreadSafetyMode.PublicationOnly);
        _brotli = new(() => Packed($"\"{tag}-br\"", "br", to => new BrotliStream(to, CompressionLevel.Optimal, leaveOpen: true)), LazyThreadSafetyMode.PublicationOnly);
    }

    /// <summary>The tile as it was drawn; empty where the map has nothing.</summary>
    public byte[] Bytes => _plain.Bytes;

    /// <summary>The tile in the best coding that an Accept-Encoding header allows.</summary>
    public TileBody For(string? acceptEncoding)
    {
        if (string.IsNullOrEmpty(acceptEncoding) || Bytes.Length < LeastPacked)
            return _plain;
        var body = ContentCodings.Takes(acceptEncoding, "br") ? _brotli.Value : ContentCodings.Takes(acceptEncoding, "gzip") ? _gzip.Value : _plain;
        return body.Bytes.Length < Bytes.Length ? body : _plain;
    }

    private TileBody Packed(string tag, string coding, Func<Stream, Stream> pack)
    {
        using var packed = new MemoryStream();
        using (var to = pack(packed))
            to.Write(Bytes);
        return new(packed.ToArray(), tag, coding);
    }
}

/// <summary>A tile in one content coding.</summary>
/// <param name="Bytes">What is sent.</param>
/// <param name="Tag">Its entity tag, in quotation marks; every coding has its own.</param>
/// <param name="Coding">The content coding; null for none.</param>
internal sealed record TileBody(byte[] Bytes, string Tag, string? Coding);
