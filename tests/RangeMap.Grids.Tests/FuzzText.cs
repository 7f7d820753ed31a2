namespace RangeMap.Grids.Tests;

/// <summary>Random texts, and real references and coordinates with a few characters changed, from a seeded source.</summary>
internal sealed class FuzzText(int seed)
{
    private const string Alphabet = "TQSNHJIOWAVEtqmkURDCPG_0123456789  .-,/:;+°'\"ＴＱ９\u00A0\u2212\u2032é#\u0000\uD800";

    private static readonly string[] Real =
    [
        "TQ 308 801", "SO45K", "N45SE", "WV6548", "IJ3374", "ITM 715830 734697", "RD 155-463", "30UXC9912", "18S UJ 23371 06519", "10kmE342N321",
        "CRS3035RES10000mN3210000E3420000", "EPSG:27700 530800 180100", "30U 565145 5448517", "E 530800 N 180100", "530800.5 180100.25",
        "54.1, -2.3", "54°06'30\"N, 2°18'00\"W", "N54.1 W2.3", "54 06 00 -2 18 00",
    ];

    private readonly Random _random = new(seed);

    /// <summary>The next text, up to some thirty characters.</summary>
    public string Next() => _random.Next(2) == 0 ? Invented() : Changed(Real[_random.Next(Real.Length)]);

    private string Invented()
    {
        Span<char> text = stackalloc char[_random.Next(24)];
        foreach (ref var ch in text)
            ch = AnyCharacter();
        return new(text);
    }

    private string Changed(string real)
    {
        Span<char> text = stackalloc char[real.Length + 3];
        real.CopyTo(text);
        var length = real.Length;
        for (var k = _random.Next(4); k > 0; k--)
        {
            var at = _random.Next(length + 1);
            switch (_random.Next(3))
            {
                case 0 when length < text.Length:
                    text[at..length].CopyTo(text[(at + 1)..]);
                    text[at] = AnyCharacter();
                    length++;
                    break;
                case 1 when at < length:
                    text[(at + 1)..length].CopyTo(text[at..]);
                    length--;
                    break;
                case 2 when at < length:
                    text[at] = AnyCharacter();
                    break;
            }
        }

        return new(text[..length]);
    }

    private char AnyCharacter() => _random.Next(20) == 0 ? (char)_random.Next(0x10000) : Alphabet[_random.Next(Alphabet.Length)];
}
