using System.Text;

namespace RangeMap.Records.Tests;

public sealed class EncodingTests
{
    private const string Text = "species,date,gridref,site\nFictus ruber,1998,TQ38,Llŷn – café\n";
    private const string LatinText = "species,date,gridref,site\nFictus ruber,1998,TQ38,café\n";

    public static TheoryData<string, TextEncoding> Encodings => new()
    {
        { "utf-8", TextEncoding.Utf8 },
        { "utf-16", TextEncoding.Utf16LittleEndian },
        { "utf-16BE", TextEncoding.Utf16BigEndian },
    };

    [Theory]
    [MemberData(nameof(Encodings))]
    public void UnicodeIsReadWithAndWithoutAByteOrderMark(string name, TextEncoding expected)
    {
        var encoding = Encoding.GetEncoding(name);
        byte[] plain = encoding.GetBytes(Text), marked = [.. encoding.GetPreamble(), .. plain];
        foreach (var bytes in (byte[][])[plain, marked])
        {
            var reading = Reading.Of(new MemoryStream(bytes));
            Assert.Equal(expected, reading.Reader.Encoding);
            Assert.Equal("Llŷn – café", Assert.Single(reading.Records).Site);
        }
    }

    [Fact]
    public void BytesThatAreNoUtf8AreReadAsWindows1252()
    {
        var reading = Reading.Of(new MemoryStream(Encoding.Latin1.GetBytes(LatinText)));

        Assert.Equal(TextEncoding.Windows1252, reading.Reader.Encoding);
        Assert.Equal("café", Assert.Single(reading.Records).Site);
    }

    [Fact]
    public void AByteThatIsNoUtf8FarDownIsSaidWithItsLineAndNothingIsLost()
    {
        var good = string.Concat(Enumerable.Repeat("Fictus ruber,1998,TQ38,Llŷn\n", 60_000));
        byte[] bytes = [.. Encoding.UTF8.GetBytes("species,date,gridref,site\n" + good), .. Encoding.Latin1.GetBytes("Fictus ruber,1998,TQ38,café\n"), .. Encoding.UTF8.GetBytes(good)];
        var reading = Reading.Of(new MemoryStream(bytes));

        Assert.Equal(120_000, reading.Records.Count);
        var refusal = Assert.Single(reading.Refusals);
        Assert.Equal((60_002, "Fictus ruber,1998,TQ38,café"), (refusal.Line, refusal.RawText));
    }

    [Fact]
    public void AStatedEncodingIsUsed()
    {
        var reading = Reading.Of(new MemoryStream(Encoding.Latin1.GetBytes(LatinText)), Reading.Options with { Encoding = TextEncoding.Utf8 });

        Assert.Contains("no characters", Assert.Single(reading.Refusals).Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(',')]
    [InlineData(';')]
    [InlineData('\t')]
    [InlineData('|')]
    public void TheSeparatorIsToldFromTheHeader(char separator)
    {
        var reading = Reading.Of(LatinText.Replace(',', separator));

        Assert.Equal(separator, reading.Reader.Separator);
        Assert.Single(reading.Records);
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void EveryLineEndIsRead(string end)
    {
        var reading = Reading.Of(string.Join(end, "species,date,gridref", "Fictus ruber,1998,TQ38", "Fictus ruber,1999,bad"));

        Assert.Single(reading.Records);
        Assert.Equal(3, Assert.Single(reading.Refusals).Line);
    }

    [Fact]
    public void ASeparatorStatedBeforeTheHeaderIsTaken() =>
        Assert.Single(Reading.Of("sep=;\nspecies;date;gridref\nFictus ruber;1998;TQ38\n").Records);

    [Fact]
    public void HalfASurrogatePairInUtf16IsRefused()
    {
        var bytes = Encoding.Unicode.GetBytes("species,date,gridref\nFictus X,1998,TQ38\n");
        bytes[2 * "species,date,gridref\nFictus ".Length] = 0x00;
        bytes[2 * "species,date,gridref\nFictus ".Length + 1] = 0xD8;

        Assert.Contains("no characters", Assert.Single(Reading.Of(new MemoryStream(bytes)).Refusals).Reason, StringComparison.Ordinal);
    }
}
