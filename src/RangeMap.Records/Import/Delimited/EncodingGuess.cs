using System.Buffers;
using System.Text;

namespace RangeMap.Records;

/// <summary>Tells from the first bytes of a file how its characters are written.</summary>
internal static class EncodingGuess
{
    /// <summary>
    /// A byte order mark decides. Without one, zero bytes on every other place mean UTF-16. Otherwise the file is UTF-8,
    /// unless the sample holds at least as many broken as sound multi-byte characters: then it is Windows-1252. A
    /// UTF-8 file with a few broken rows thus stays UTF-8, and only those rows suffer.
    /// </summary>
    /// <param name="sample">The first bytes of the file.</param>
    /// <param name="markLength">Bytes of the byte order mark to skip.</param>
    public static TextEncoding Of(ReadOnlySpan<byte> sample, out int markLength)
    {
        markLength = 0;
        if (sample.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
        {
            markLength = 3;
            return TextEncoding.Utf8;
        }

        if (sample.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || sample.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
        {
            markLength = 2;
            return sample[0] == 0xFF ? TextEncoding.Utf16LittleEndian : TextEncoding.Utf16BigEndian;
        }

        return ByZeroBytes(sample) ?? ByMultiByteCharacters(sample);
    }

    /// <summary>Letters, figures and separators have a zero high byte in UTF-16; text of one byte a character has no zeros.</summary>
    private static TextEncoding? ByZeroBytes(ReadOnlySpan<byte> sample)
    {
        var zeros = (Even: 0, Odd: 0);
        var pairs = Math.Min(sample.Length, 4096) / 2;
        for (var i = 0; i < pairs; i++)
        {
            zeros.Even += sample[2 * i] == 0 ? 1 : 0;
            zeros.Odd += sample[2 * i + 1] == 0 ? 1 : 0;
        }

        if (pairs < 2)
            return null;
        if (zeros.Odd * 2 > pairs && zeros.Even * 10 < pairs)
            return TextEncoding.Utf16LittleEndian;
        return zeros.Even * 2 > pairs && zeros.Odd * 10 < pairs ? TextEncoding.Utf16BigEndian : null;
    }

    private static TextEncoding ByMultiByteCharacters(ReadOnlySpan<byte> sample)
    {
        int sound = 0, broken = 0;
        while (true)
        {
            var next = sample.IndexOfAnyInRange((byte)0x80, (byte)0xFF);
            if (next < 0)
                break;
            sample = sample[next..];
            var status = Rune.DecodeFromUtf8(sample, out _, out var used);
            if (status == OperationStatus.NeedMoreData)
                break;
            sound += status == OperationStatus.Done ? 1 : 0;
            broken += status == OperationStatus.Done ? 0 : 1;
            sample = sample[used..];
        }

        return broken > 0 && broken >= sound ? TextEncoding.Windows1252 : TextEncoding.Utf8;
    }
}
