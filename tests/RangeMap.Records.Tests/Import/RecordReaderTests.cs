using RangeMap.Grids;

namespace RangeMap.Records.Tests;

public sealed class RecordReaderTests
{
    private const string Header = "occurrenceID,scientificName,eventDate,gridReference,recordedBy,individualCount,sex,lifeStage,identificationVerificationStatus";

    [Fact]
    public void AFullRowBecomesARecord()
    {
        var record = Assert.Single(Reading.OfRow(Header, "a1,Fictus ruber,1998-06-03,TQ 308 801,A. Nobody,3,Females,imago,Accepted").Records);

        Assert.Equal(1, record.Row);
        Assert.Equal("1", record.Taxon.Id);
        Assert.Equal(new Square(GridId.British, SquareSize.M100, 530_800, 180_100), record.Square);
        Assert.Equal(DayRange.Day(new(1998, 6, 3)), record.Dates);
        Assert.Equal(("A. Nobody", 3, "female", "adult", ReviewStatus.Confirmed), (record.Recorder, record.Count, record.Sex, record.Stage, record.Status));
        Assert.Equal(Doubts.None, record.Doubts);
        Assert.True(record.Present);
    }

    [Fact]
    public void RowsKeepTheirNumbersLinesAndRawText()
    {
        using var stream = new MemoryStream("species,date,gridref,notes\n\nFictus ruber,1998,TQ38,\"two\r\nlines\"\r\n,,,\nFictus albus,1999,TQ39,\"a \"\"b\"\"\"\n"u8.ToArray());
        var reader = RecordReader.Open(stream, Reading.Taxa, Reading.Options);

        Assert.True(reader.Read());
        Assert.Equal((1, 3, "Fictus ruber,1998,TQ38,\"two\r\nlines\""), (reader.Row, reader.Line, reader.RawText.ToString()));
        Assert.True(reader.Read());
        Assert.Equal((2, 6, "Fictus albus,1999,TQ39,\"a \"\"b\"\"\""), (reader.Row, reader.Line, reader.RawText.ToString()));
        Assert.False(reader.Read());
        Assert.Equal((2, 1), (reader.Counts.Accepted, reader.Counts.Blank));
    }
}
