using CsCheck;

namespace RangeMap.Store.Tests;

public class SourceBlockTests
{
    [Fact]
    public void AnyRowsComeBackAsTheyWereSent() =>
        Gen.Char["a,\"\n\r\u001B\u001E\u001F\0é鳥"].Array[0, 8].Select(letters => new string(letters)).Array[1, 6].Sample(rows =>
        {
            var block = Pack(rows);
            Assert.Equal(rows, SourceBlock.Rows(block.Data));
            Assert.Equal(rows[^1], SourceBlock.Read(block.Data, rows.Length - 1));
        });

    [Theory]
    [InlineData(-1)]
    [InlineData(2)]
    [InlineData(long.MaxValue)]
    public void ARowThatTheBlockDoesNotHoldIsNone(long index) => Assert.Null(SourceBlock.Read(Pack(["one", "two"]).Data, index));

    private static SourceBlock Pack(string[] rows)
    {
        var text = new SourceRows();
        foreach (var row in rows)
            text.Add(row);
        return text.Pack(1);
    }
}
