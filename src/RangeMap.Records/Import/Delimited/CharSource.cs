using System.Buffers;
using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.Unicode;

namespace RangeMap.Records;

/// <summary>
/// Decodes a stream of bytes to characters without losing any byte: one that means nothing in the file's encoding
/// becomes the lone surrogate U+DC00 + byte, which no sound text contains, so that its row can be told and shown.
/// </summary>
internal sealed class CharSource
{
    private const int FirstBytes = 1 << 12;
    private const int SampleBytes = 1 << 20;
    private const char BadByte = '\uDC00';
    private static readonly char[] Windows1252 = DecodeWindows1252();

    private readonly Stream _stream;
    private byte[] _bytes = new byte[FirstBytes];
    private int _first;
    private int _last;
    private bool _streamEnded;

    /// <param name="stream">Read from where it stands.</param>
    /// <param name="stated">The encoding, if known; else it is told from the first megabyte.</param>
    public CharSource(Stream stream, TextEncoding? stated)
    {
        _stream = stream;
        ReadSample();
        var guess = EncodingGuess.Of(_bytes.AsSpan(0, _last), out _first);
        Encoding = stated ?? guess;
        if (Encoding != guess)
            _first = 0;
        MayHoldBadText = Encoding is TextEncoding.Utf16LittleEndian or TextEncoding.Utf16BigEndian;
    }

    public TextEncoding Encoding { get; }

    /// <summary>True once a row may hold a lone surrogate: always in UTF-16, elsewhere after the first bad byte.</summary>
    public bool MayHoldBadText { get; private set; }

    /// <summary>Reads some characters; 0 only at the end of the file.</summary>
    public int Read(Span<char> destination)
    {
        while (true)
        {
            var written = Decode(destination);
            if (written > 0 || destination.IsEmpty)
                return written;
            if (_streamEnded)
                return _first < _last ? EscapeByte(destination) : 0;
            Refill();
        }
    }

    /// <summary>The text with each bad byte shown as the Windows-1252 character, which is what it usually was.</summary>
    public static string Readable(ReadOnlySpan<char> text)
    {
        if (text.IndexOfAnyInRange('\uD800', '\uDFFF') < 0)
            return text.ToString();
        var shown = text.ToArray();
        for (var i = FirstLoneSurrogate(shown); i >= 0; i = FirstLoneSurrogate(shown))
            shown[i] = shown[i] is >= BadByte and <= (char)(BadByte + 0xFF) ? Windows1252[shown[i] - BadByte] : '\uFFFD';
        return new string(shown);
    }

    /// <summary>Where the first surrogate without its other half stands, or -1.</summary>
    public static int FirstLoneSurrogate(ReadOnlySpan<char> text)
    {
        for (var i = text.IndexOfAnyInRange('\uD800', '\uDFFF'); i >= 0 && i < text.Length; i++)
        {
            if (!char.IsSurrogate(text[i]))
                continue;
            if (i + 1 == text.Length || !char.IsSurrogatePair(text[i], text[i + 1]))
                return i;
            i++;
        }

        return -1;
    }

    /// <summary>Fills the buffer, which grows to the whole sample only if the file is as long.</summary>
    private void ReadSample()
    {
        Refill();
        while (!_streamEnded && _bytes.Length < SampleBytes)
        {
            Array.Resize(ref _bytes, _bytes.Length * 16);
            Refill();
        }
    }

    private void Refill()
    {
        _bytes.AsSpan(_first, _last - _first).CopyTo(_bytes);
        _last -= _first;
        _first = 0;
        var read = _stream.ReadAtLeast(_bytes.AsSpan(_last), _bytes.Length - _last, throwOnEndOfStream: false);
        _streamEnded = read < _bytes.Length - _last;
        _last += read;
    }

    private int Decode(Span<char> destination) => Encoding switch
    {
        TextEncoding.Utf8 => DecodeUtf8(destination),
        TextEncoding.Windows1252 => DecodeBytewise(destination),
        _ => DecodeUtf16(destination),
    };

    private int DecodeUtf8(Span<char> destination)
    {
        var total = 0;
        while (true)
        {
            var status = Utf8.ToUtf16(_bytes.AsSpan(_first, _last - _first), destination[total..], out var read, out var written, replaceInvalidSequences: false, isFinalBlock: _streamEnded);
            _first += read;
            total += written;
            if (status != OperationStatus.InvalidData || total == destination.Length)
                return total;
            total += EscapeByte(destination[total..]);
        }
    }

    private int EscapeByte(Span<char> destination)
    {
        MayHoldBadText = true;
        destination[0] = (char)(BadByte + _bytes[_first++]);
        return 1;
    }

    private int DecodeBytewise(Span<char> destination)
    {
        var count = Math.Min(destination.Length, _last - _first);
        for (var i = 0; i < count; i++)
            destination[i] = Windows1252[_bytes[_first + i]];
        _first += count;
        return count;
    }

    private int DecodeUtf16(Span<char> destination)
    {
        var units = MemoryMarshal.Cast<byte, ushort>(_bytes.AsSpan(_first, _last - _first));
        var count = Math.Min(units.Length, destination.Length);
        var target = MemoryMarshal.Cast<char, ushort>(destination);
        if (Encoding == TextEncoding.Utf16LittleEndian == BitConverter.IsLittleEndian)
            units[..count].CopyTo(target);
        else
            BinaryPrimitives.ReverseEndianness(units[..count], target);
        _first += 2 * count;
        return count;
    }

    private static char[] DecodeWindows1252()
    {
        var every = new byte[256];
        for (var i = 0; i < every.Length; i++)
            every[i] = (byte)i;
        return CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetChars(every);
    }
}
