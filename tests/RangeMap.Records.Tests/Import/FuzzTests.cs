using System.Text;
using CsCheck;
using nietras.SeparatedValues;

namespace RangeMap.Records.Tests;

/// <summary>No file, however broken, does anything but become records, refusals or one stated problem.</summary>
public sealed class FuzzTests
{
    private const string Valid =
        "occurrenceID,scientificName,eventDate,gridReference,decimalLatitude,decimalLongitude,recordedBy,individualCount,locality\n" +
        "a1,Fictus ruber,1998-06-03,TQ308801,,,A. Nobody,3,\"A wood, by the water\"\n" +
        "a2,Fictus albus,1998-06/07,,52.657977,1.716038,B. Nobody,,\"The \"\"old\"\" mill\nwith a line end\"\n" +
        "a3,Fictus cf. ruber,25/06/1998,SP10NE,52.6,1.7,C. Nobody,0,Caf\u00e9\n";

    private static readonly string[] SomeDateWords =
    [
        "before ", "c. ", "after ", "since ", "until ", "between ", " and ", "from ", " to ", "spring ", "winter ", "1998", "2026", "9999", "0001", "1600", "1980s", "/", "-", "\u2013", "99", "9", "P1Y", "P9999M", "June ", "31 ",
        "Wed ", "W07", "366", "s", "..", "T", " ", "1998-06-03", "3/6/1998", "~",
    ];

    private static readonly Gen<string> DateWords = Gen.Int[0, SomeDateWords.Length - 1].Select(i => SomeDateWords[i]);

    private static readonly byte[] ValidBytes = Encoding.UTF8.GetBytes(Valid);

    [Fact]
    public void RandomBytesNeverEscapeTheReader() =>
        Gen.Byte.Array[0, 400].Sample(ReadAny, iter: 20_000);

    [Fact]
    public void RandomTextUnderAHeaderNeverEscapesTheReader() =>
        Gen.Char["aF1;,\"\n\r \t|/-.:'=NETQ0\0\u00e9"].Array[0, 200].Select(c => "species,date,gridref\n" + new string(c))
            .Sample(text => ReadAny(Encoding.UTF8.GetBytes(text)), iter: 50_000);

    [Fact]
    public void MutatedFilesNeverEscapeTheReader() =>
        Gen.Select(Gen.Int[0, ValidBytes.Length - 1], Gen.Byte, Gen.Int[0, 3]).Array[1, 8].Sample(
            changes =>
            {
                var bytes = ValidBytes.ToList();
                foreach (var (at, value, kind) in changes)
                    Mutate(bytes, Math.Min(at, bytes.Count - 1), value, kind);
                ReadAny([.. bytes]);
            },
            iter: 20_000);

    [Fact]
    public void RandomMarksAndLengthsNeverEscapeTheirReaders() =>
        Gen.Char["aq0159-,;|:. \u2013tomwrkefcn/?\ud800"].Array[0, 40].Select(c => new string(c)).Sample(
            text =>
            {
                foreach (var column in TaxonMarksText.Columns)
                    TaxonMarksText.Write(TaxonMarksText.Read(new Dictionary<string, string> { [column] = text }, out _));
                LengthText.Read(text);
                EvidenceLink.Shown($"http:{text}");
                Reading.Taxa.Suggest(text);
                JoinedNames.Split(text);
            },
            iter: 20_000);

    [Fact]
    public void RandomDatesNeverEscapeTheirReader() =>
        Gen.OneOf(Gen.Char["0123456789-/:.TWPYMD Jun"].Array[0, 24].Select(c => new string(c)), DateWords.Array[1, 6].Select(string.Concat)).Sample(
            text =>
            {
                var read = DateText.TryParse(text, DateOrder.DayFirst, new(2026, 6, 7), out var days, out var why);
                return read ? why is null && days.First <= days.Last && days.First >= DateText.Earliest : why is not null;
            },
            iter: 300_000);

    [Fact]
    public void EveryDayIsReadBack() =>
        Gen.Int[0, 155_000].Select(DateText.Earliest.AddDays).Sample(day =>
            DateText.TryParse(day.ToString("yyyy-MM-dd", null), DateOrder.NotStated, new(2026, 6, 7), out var days, out _) && days == DayRange.Day(day));

    // Sep is an independent reader of delimited text.
    [Fact]
    public void FieldsAreSplitAsAnIndependentReaderSplitsThem()
    {
        var cell = Gen.Char["ab,\"\n;' \u00e9"].Array[0, 8].Select(c => new string(c));
        cell.Array[3].Array[1, 20].Sample(
            rows =>
            {
                var text = "h1,h2,h3\n" + string.Concat(rows.Select(r => string.Join(',', r.Select(c => $"\"{c.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")) + "\n"));
                using var sep = Sep.New(',').Reader(o => o with { Unescape = true }).FromText(text);
                var own = DelimitedRows.Open(new MemoryStream(Encoding.UTF8.GetBytes(text)), null, ',').Rows;
                foreach (var row in sep)
                {
                    Assert.True(own.Read());
                    Assert.Equal((row.LineNumberFrom, row.ColCount), ((int)own.Line, own.Count));
                    for (var i = 0; i < row.ColCount; i++)
                        Assert.Equal(row[i].ToString(), own[i].ToString());
                }

                Assert.False(own.Read());
            },
            iter: 5_000);
    }

    private static void Mutate(List<byte> bytes, int at, byte value, int kind)
    {
        if (kind == 0 && bytes.Count > 1)
            bytes.RemoveAt(at);
        else if (kind == 1)
            bytes.Insert(at, value);
        else if (kind == 2)
            bytes[at] = value;
        else
            bytes.InsertRange(at, bytes.GetRange(at / 2, Math.Min(40, bytes.Count - at / 2)));
    }

    private static void ReadAny(byte[] bytes)
    {
        try
        {
            Reading.Of(new MemoryStream(bytes), Reading.Options with { NewTaxa = bytes.Length % 2 == 0 });
        }
        catch (ImportProblemException e)
        {
            Assert.NotEmpty(e.Problem.What);
            Assert.NotEmpty(e.Problem.Mend);
        }
    }
}
