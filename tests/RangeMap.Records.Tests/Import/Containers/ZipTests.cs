using System.IO.Compression;
using System.Text;
using RangeMap.TestKit;

namespace RangeMap.Records.Tests;

public sealed class ZipTests
{
    private const string Table = "species,date,gridref\nFictus ruber,1998,TQ38\n";

    [Fact]
    public void TheOneTableInAZipFileIsRead()
    {
        var zip = SomeZip.Of(("data/records.csv", Table), ("data/eml.xml", "<eml/>"), ("__MACOSX/._records.csv", "x"), ("data/.DS_Store", "x"), ("data/rights.txt", "none"));
        var reading = Reading.Of(zip);

        Assert.Single(reading.Records);
        Assert.Contains("data/records.csv", reading.Reader.File.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void SeveralTablesWithoutADescriptionAreRefusedAndNamed() =>
        Assert.Contains("a.csv, b.csv", Reading.ProblemOf(SomeZip.Of(("a.csv", Table), ("b.csv", Table))).Where, StringComparison.Ordinal);

    [Fact]
    public void AnEmptyZipFileIsRefused() => Assert.Contains("no table", Reading.ProblemOf(SomeZip.Of()).What, StringComparison.Ordinal);

    [Theory]
    [InlineData("../records.csv", "points outside")]
    [InlineData("a/../../records.csv", "points outside")]
    [InlineData("/etc/records.csv", "points outside")]
    [InlineData("C:/records.csv", "points outside")]
    [InlineData("..\\records.csv", "points outside")]
    [InlineData("a\u0001b.csv", "control characters")]
    public void NamesThatPointOutsideAreRefused(string name, string reason) =>
        Assert.Contains(reason, Reading.ProblemOf(SomeZip.Of((name, Table))).What, StringComparison.Ordinal);

    [Fact]
    public void RepeatedEntriesAreRefusedWithTheirName() =>
        Assert.Contains("\"A.csv\" twice", Reading.ProblemOf(SomeZip.Of(("a.csv", Table), ("A.csv", Table))).What, StringComparison.Ordinal);

    [Fact]
    public void NestedPackedFilesAreRefusedWithTheirName()
    {
        Assert.Contains("\"inner.dat\"", Reading.ProblemOf(SomeZip.OfBytes(("inner.dat", SomeZip.Of(("a.csv", Table)).ToArray()))).What, StringComparison.Ordinal);
        Assert.Contains("\"inner.csv\"", Reading.ProblemOf(SomeZip.OfBytes(("inner.csv", SomeZip.Gzip(Table)))).What, StringComparison.Ordinal);
    }

    [Fact]
    public void AZipBombIsStopped()
    {
        var bomb = SomeZip.Of(("records.csv", Table + new string('\n', 3_000_000)));
        var before = GC.GetAllocatedBytesForCurrentThread();
        var problem = Reading.ProblemOf(bomb, Reading.Options with { Limits = new() { UnpackedBytesBeforeRatio = 1_000_000 } });

        Assert.Equal("records.csv", problem.Where);
        Assert.Contains("times its size", problem.What, StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 20_000_000);
    }

    [Fact]
    public void TooManyEntriesAreRefused()
    {
        var many = SomeZip.Of([.. Enumerable.Range(0, 1_001).Select(i => ($"{i}.csv", ""))]);
        var longNames = SomeZip.Of([.. Enumerable.Range(0, 40).Select(i => ($"{i}{new string('x', 30_000)}", ""))]);

        Assert.Contains("1,001 entries", Reading.ProblemOf(many).What, StringComparison.Ordinal);
        Assert.Contains("list of entries", Reading.ProblemOf(longNames).What, StringComparison.Ordinal);
    }

    [Fact]
    public void ADamagedEntryIsNoticed()
    {
        var rows = string.Concat(Enumerable.Range(0, 3000).Select(i => $"Fictus ruber,{1900 + i % 100},TQ{i * 7919 % 100:00}\n"));
        var zip = SomeZip.Of(("records.csv", Table + rows)).ToArray();
        for (var at = 60; at < zip.Length - 120; at += 211)
        {
            var changed = (byte[])zip.Clone();
            changed[at] ^= 4;
            Assert.Contains("damaged", Reading.ProblemOf(new MemoryStream(changed)).What, StringComparison.Ordinal);
        }

        Assert.Contains("damaged", Reading.ProblemOf(new MemoryStream(zip[..^10])).What, StringComparison.Ordinal);
    }

    [Fact]
    public void AZipFileFromAPipeIsRefused()
    {
        using var pipe = new GZipStream(new MemoryStream(SomeZip.Gzip(SomeZip.Of(("a.csv", Table)).ToArray())), CompressionMode.Decompress);

        Assert.Contains("pipe", Reading.ProblemOf(pipe).What, StringComparison.Ordinal);
    }

    [Fact]
    public void AFolderIsReadAsAZipFileIs()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(Path.Combine(folder.Path, "records.csv"), Table, Encoding.UTF8);
        using var reader = RecordReader.OpenFolder(folder.Path, Reading.Taxa, Reading.Options);

        Assert.True(reader.Read());
        Assert.NotNull(reader.Record);
    }

    [Fact]
    public void LinksInAFolderAreNotFollowed()
    {
        using var folder = new TemporaryFolder();
        using var elsewhere = new TemporaryFolder();
        File.WriteAllText(Path.Combine(elsewhere.Path, "secret.csv"), Table);
        File.CreateSymbolicLink(Path.Combine(folder.Path, "records.csv"), Path.Combine(elsewhere.Path, "secret.csv"));

        Assert.Throws<ImportProblemException>(() => RecordReader.OpenFolder(folder.Path, Reading.Taxa, Reading.Options));
    }

    [Theory]
    [InlineData("%PDF-1.7", "PDF")]
    [InlineData("PAR1\u0015xxx", "Parquet")]
    [InlineData("SQLite format 3\0", "SQLite")]
    [InlineData("<!doctype html><p>", "web page")]
    [InlineData("\uFEFF<?xml version='1.0'?>", "XML")]
    [InlineData("BZh91AY", "bzip2")]
    public void KnownKindsThatAreNotReadAreNamed(string begin, string kind) =>
        Assert.Contains(kind, Reading.ProblemOf(begin + new string('x', 20)).What, StringComparison.Ordinal);
}
