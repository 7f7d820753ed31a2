using CsCheck;

namespace RangeMap.Grids.Tests;

public sealed class GridReferenceTests
{
    [Theory]
    [InlineData("TQ", GridId.British, SquareSize.Km100, 500_000, 100_000)]
    [InlineData("TQ38", GridId.British, SquareSize.Km10, 530_000, 180_000)]
    [InlineData("TQ38SE", GridId.British, SquareSize.Km5, 535_000, 180_000)]
    [InlineData("TQ38NW", GridId.British, SquareSize.Km5, 530_000, 185_000)]
    [InlineData("SO45K", GridId.British, SquareSize.Km2, 344_000, 250_000)]
    [InlineData("TQ3080", GridId.British, SquareSize.Km1, 530_000, 180_000)]
    [InlineData("TQ308801", GridId.British, SquareSize.M100, 530_800, 180_100)]
    [InlineData("TQ30808012", GridId.British, SquareSize.M10, 530_800, 180_120)]
    [InlineData("TQ3080180123", GridId.British, SquareSize.M1, 530_801, 180_123)]
    [InlineData("HP61", GridId.British, SquareSize.Km10, 460_000, 1_210_000)]
    [InlineData("SV91", GridId.British, SquareSize.Km10, 90_000, 10_000)]
    [InlineData("J3374", GridId.Irish, SquareSize.Km1, 333_000, 374_000)]
    [InlineData("IJ3374", GridId.Irish, SquareSize.Km1, 333_000, 374_000)]
    [InlineData("N", GridId.Irish, SquareSize.Km100, 200_000, 200_000)]
    [InlineData("N45SE", GridId.Irish, SquareSize.Km5, 245_000, 250_000)]
    [InlineData("T12W", GridId.Irish, SquareSize.Km2, 318_000, 122_000)]
    [InlineData("NW87NE", GridId.British, SquareSize.Km5, 185_000, 575_000)]
    [InlineData("SE", GridId.British, SquareSize.Km100, 400_000, 400_000)]
    [InlineData("SE12NE", GridId.British, SquareSize.Km5, 415_000, 425_000)]
    [InlineData("S12NE", GridId.Irish, SquareSize.Km5, 215_000, 125_000)]
    [InlineData("WV6548", GridId.ChannelIslands, SquareSize.Km1, 565_000, 5_448_000)]
    [InlineData("WA50", GridId.ChannelIslands, SquareSize.Km10, 550_000, 5_500_000)]
    public void EveryUsualFormNamesItsSquare(string text, GridId grid, SquareSize size, int easting, int northing) =>
        Assert.Equal(new Square(grid, size, easting, northing), GridReference.Parse(text));

    [Theory]
    [InlineData("tq 308 801", "TQ308801")]
    [InlineData("  Tq3080 ", "TQ3080")]
    [InlineData("ＴＱ３０８０", "TQ3080")]
    [InlineData("TQ\u300030\u00A080", "TQ3080")]
    [InlineData("TQ-308-801", "TQ308801")]
    [InlineData("TQ 308,801", "TQ308801")]
    [InlineData("TQ/308/801", "TQ308801")]
    [InlineData("T.Q. 308 801", "TQ308801")]
    [InlineData("TQ 3 8 a", "TQ38A")]
    [InlineData("tq38 se", "TQ38SE")]
    [InlineData("ij 33 74", "J3374")]
    public void SpacingCapitalsAndFullWidthDoNotMatter(string text, string same) =>
        Assert.Equal(same, GridReference.Parse(text).ToString());

    [Theory]
    [InlineData("", "empty")]
    [InlineData(" - ", "empty")]
    [InlineData("530800 180100", "begins with the letters")]
    [InlineData("TQ3080801", "7 figures: give an even number")]
    [InlineData("TQ3", "1 figure: give an even number")]
    [InlineData("TQ 308 8012", "groups of 3 and 4")]
    [InlineData("TQ 30 80 12", "3 groups")]
    [InlineData("TQ 30.8 80.1", "dot stands between figures")]
    [InlineData("TQ38O", "O is not used in tetrad letters")]
    [InlineData("TQ3O80", "write the figure 0")]
    [InlineData("TQ3l80", "write the figure 1")]
    [InlineData("TQ3X80", "X stands among the figures")]
    [InlineData("XX3080", "XX is no 100 km square of the British grid")]
    [InlineData("WW3080", "WW is no 100 km square of the British grid")]
    [InlineData("ZZ", "ZZ is no 100 km square")]
    [InlineData("I3374", "I is not used for an Irish")]
    [InlineData("II3374", "I is not used for an Irish")]
    [InlineData("TQ3080A", "letter after the four figures of a 1 km square")]
    [InlineData("TQ308801A", "tetrad letter follows two figures")]
    [InlineData("TQ3080NE", "quadrant follows two figures")]
    [InlineData("TQ38XY", "XY after the figures is no quadrant")]
    [InlineData("TQ38NN", "NN after the figures is no quadrant")]
    [InlineData("TQ38ABC", "3 letters stand after the figures")]
    [InlineData("LONDON", "6 letters stand before the figures")]
    [InlineData("TQ30#80", "'#' does not belong")]
    [InlineData("TQ30\u000080", "U+0000 does not belong")]
    [InlineData("TQ 1234567890 1234567890", "More than 18 figures")]
    public void EveryFaultHasItsReason(string text, string reason)
    {
        Assert.False(GridReference.TryParse(text, default, out var square, out var why));
        Assert.Equal(default, square);
        Assert.Contains(reason, why, StringComparison.Ordinal);
    }

    [Fact]
    public void ALongTextIsRefusedWithoutReadingIt()
    {
        Assert.False(GridReference.TryParse(new string('9', 1_000_000), default, out _, out var why));
        Assert.Contains("1000000 characters", why, StringComparison.Ordinal);
    }

    [Fact]
    public void MoreThanTenFiguresAreReadToOneMetreAndSaid()
    {
        Assert.True(GridReference.TryParse("TQ 308019 801239", default, out var square, out var notes, out _));
        Assert.Equal("TQ3080180123", square.ToString());
        Assert.Equal(GridReferenceNotes.ReadToOneMetre, notes);
    }

    [Fact]
    public void ALeadingIIsLeftOutAndSaid()
    {
        Assert.True(GridReference.TryParse("IJ3374", default, out _, out var notes, out _));
        Assert.Equal(GridReferenceNotes.LeadingILeftOut, notes);
        Assert.Equal(["The I before the letter was left out: it was read on the Irish grid."], GridReference.InWords(notes));
    }

    [Fact]
    public void ChannelIslandsAreOnEd50UnlessTheDataSetSaysWgs84()
    {
        Assert.True(GridReference.TryParse("WV6548", default, out var older, out var notes, out _));
        Assert.Equal((GridId.ChannelIslands, GridReferenceNotes.ChannelIslandsDatumAssumed), (older.Grid, notes));
        Assert.True(GridReference.TryParse("WV6548", new(ChannelIslandsWgs84: true), out var newer, out notes, out _));
        Assert.Equal((GridId.ChannelIslandsWgs84, GridReferenceNotes.None), (newer.Grid, notes));
    }

    [Fact]
    public void ParseThrowsWithTheTextAndTheReason()
    {
        var fault = Assert.Throws<FormatException>(() => GridReference.Parse("TQ3"));
        Assert.StartsWith("'TQ3': 1 figure", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsWrittenIsReadBackAsTheSameSquare() => SomeGrids.Square.Sample(square =>
    {
        var name = GridReference.Format(square);
        Assert.Equal(square, GridReference.Parse(name, new(square.Grid == GridId.ChannelIslandsWgs84)));
        Assert.True(name.Length <= GridReference.LongestText, name);
    }, iter: 50_000);

    [Fact]
    public void AShortPlaceIsRefusedWithoutWriting()
    {
        Assert.False(GridReference.TryFormat(GridReference.Parse("TQ308801"), new char[7], out _));
        Assert.True(GridReference.TryFormat(GridReference.Parse("TQ308801"), new char[8], out var length));
        Assert.Equal(8, length);
    }

    [Fact]
    public void ASquareOutsideTheLettersHasNoReference() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => GridReference.Format(new(GridId.British, SquareSize.Km10, 700_000, 0)));

    [Fact]
    public void ReadingAllocatesNothing()
    {
        GridReference.TryParse("TQ 308 801", default, out _, out _);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var k = 0; k < 1000; k++)
            GridReference.TryParse("TQ 308 801", default, out _, out _);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    [Fact]
    public void AnyTextGivesASquareOrAReasonAndNeverThrows()
    {
        const string Alphabet = "TQSNHJIOWAVEtq0123456789  .-,/ＴＱ９\u00A0\u2212é#\u0000\uD800";
        var random = new Random(20_240_607);
        for (var k = 0; k < 200_000; k++)
        {
            var text = string.Create(random.Next(16), random, static (span, source) =>
            {
                foreach (ref var ch in span)
                    ch = source.Next(20) == 0 ? (char)source.Next(0x10000) : Alphabet[source.Next(Alphabet.Length)];
            });
            var read = GridReference.TryParse(text, default, out var square, out var why);
            Assert.Equal(read, why is null);
            Assert.True(read ? NationalGrid.Get(square.Grid).Contains(new(square.Easting, square.Northing)) : why!.EndsWith('.'));
        }
    }
}
