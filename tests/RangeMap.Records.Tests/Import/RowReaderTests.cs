using System.Text;
using CsCheck;

namespace RangeMap.Records.Tests;

public sealed class RowReaderTests
{
    private static readonly RowLimits Tight = new(Characters: 40, Lines: 3, Fields: 6, KeptCharacters: 10);

    private static readonly Gen<string> Text = Gen.Char["ab,\"\n\r\u00e9"].Array[0, 120].Select(c => new string(c));

    [Fact]
    public void WhereTheBufferEndsMakesNoDifference() =>
        Gen.Select(Text, Gen.Int[1, 20]).Sample(
            (text, size) => Assert.Equal(Rows(text, RowLimits.Default, 1 << 14), Rows(text, RowLimits.Default, size)),
            iter: 20_000);

    [Fact]
    public void LimitsHoldWhereverTheBufferEnds() =>
        Gen.Select(Text, Gen.Int[1, 20]).Sample(
            (text, size) =>
            {
                var rows = Rows(text, Tight, size);
                Assert.All(rows, r => Assert.True(r.Fault is not null || r.Cells.Count <= 6, r.Raw));
                Assert.Equal(rows.OrderBy(r => r.Line).DistinctBy(r => r.Line), rows);
            },
            iter: 20_000);

    [Fact]
    public void NoCharacterIsLost() =>
        Text.Sample(
            text =>
            {
                var kept = string.Concat(Rows(text, RowLimits.Default, 7).Select(r => r.Raw));
                Assert.Equal(WithoutLineEnds(text), WithoutLineEnds(kept));
            },
            iter: 20_000);

    [Fact]
    public void CharactersOfSeveralBytesAreWholeWhereverTheBytesAreCut()
    {
        const string row = "a\u00e9\u20ac\U0001F41D,\"x\"\"\r\ny\"\r\n";
        var text = string.Concat(Enumerable.Repeat(row, 200_000));
        var rows = new RowReader(new CharSource(new MemoryStream(Encoding.UTF8.GetBytes(text)), null), RowLimits.Default);
        var count = 0;
        while (rows.Read())
        {
            Assert.Equal(2 * count + 1, rows.Line);
            Assert.True(rows[0] is "a\u00e9\u20ac\U0001F41D" && rows[1] is "x\"\r\ny");
            count++;
        }

        Assert.Equal(200_000, count);
    }

    // The naive way: a line feed ends a row, with the carriage return before it; nothing else does, and quotation marks are text.
    [Fact]
    public void AStatedLineEndAloneEndsARowWhereverTheBufferEnds() =>
        Gen.Select(Gen.Char["ab\t\"\n\r\u0085"].Array[0, 40].Select(c => new string(c)), Gen.Int[1, 9]).Sample(
            (text, size) =>
            {
                var expected = text.Split('\n')
                    .Select((line, i) => i < text.Count(c => c == '\n') && line.EndsWith('\r') ? line[..^1] : line)
                    .Where(line => line.Length > 0)
                    .Select(line => line.Split('\t'));
                var rows = new RowReader(new CharSource(new MemoryStream(Encoding.UTF8.GetBytes(text)), TextEncoding.Utf8), RowLimits.Default, new RowDialect(null, '\n'), size) { Separator = '\t' };
                foreach (var cells in expected)
                {
                    Assert.True(rows.Read());
                    Assert.Null(rows.Fault);
                    Assert.Equal(cells, Enumerable.Range(0, rows.Count).Select(i => rows[i].ToString()));
                }

                Assert.False(rows.Read());
            },
            iter: 20_000);

    private static List<(long Line, string Raw, string? Fault, Cells Cells)> Rows(string text, RowLimits limits, int buffer)
    {
        var rows = new RowReader(new CharSource(new MemoryStream(Encoding.UTF8.GetBytes(text)), TextEncoding.Utf8), limits, null, buffer);
        var result = new List<(long, string, string?, Cells)>();
        while (rows.Read())
            result.Add((rows.Line, rows.Raw.ToString(), rows.Fault, new(rows.Count, string.Join('\u241F', Enumerable.Range(0, rows.Count).Select(i => rows[i].ToString())))));
        return result;
    }

    private static string WithoutLineEnds(string text) => string.Concat(text.Where(c => c is not ('\n' or '\r')));

    private sealed record Cells(int Count, string Text);
}
