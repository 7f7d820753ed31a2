using System.Text;

namespace RangeMap.Records.Tests;

public sealed class GzipTests
{
    private const string Header = "species,date,gridref\n";
    private static readonly string Rows = string.Concat(Enumerable.Range(0, 5000).Select(i => $"Fictus ruber,{1900 + i % 100},TQ{i % 100:00}\n"));
    private static readonly byte[] Packed = SomeZip.Gzip(Header + Rows);

    [Fact]
    public void APackedTableIsReadAsTheTable()
    {
        var reading = Reading.Of(new MemoryStream(Packed));

        Assert.Equal(5000, reading.Records.Count);
        Assert.Contains("gzip", reading.Reader.File.Words, StringComparison.Ordinal);
    }

    // RFC 1952, 2.2: a file may consist of several members, and they simply follow one another.
    [Fact]
    public void SeveralMembersAreOneTable()
    {
        byte[] two = [.. SomeZip.Gzip(Header), .. SomeZip.Gzip(Rows), .. SomeZip.Gzip(""), .. SomeZip.Gzip(Rows), 0, 0, 0];

        Assert.Equal(10_000, Reading.Of(new MemoryStream(two)).Records.Count);
    }

    [Fact]
    public void AHeaderWithNameCommentAndExtraFieldIsSkipped()
    {
        byte[] full = [0x1F, 0x8B, 8, 4 | 8 | 16 | 2, 0, 0, 0, 0, 0, 3, 2, 0, 7, 7, (byte)'n', 0, (byte)'c', 0, 9, 9, .. Packed[10..]];

        Assert.Equal(5000, Reading.Of(new MemoryStream(full)).Records.Count);
    }

    [Fact]
    public void EveryCutIsNoticed()
    {
        for (var length = 2; length < Packed.Length; length += length < 40 || length > Packed.Length - 40 ? 1 : 97)
        {
            var problem = Reading.ProblemOf(new MemoryStream(Packed[..length]));
            Assert.Contains("damaged", problem.What, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void ACutSecondMemberIsNoticed()
    {
        for (var length = 1; length < 40; length++)
            Assert.Contains("damaged", Reading.ProblemOf(new MemoryStream([.. Packed, .. Packed[..length]])).What, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryChangedByteIsNoticedOrHarmless()
    {
        // The header holds a time and the system, which do not matter.
        for (var at = 10; at < Packed.Length; at += at > Packed.Length - 20 ? 1 : 53)
        {
            var changed = (byte[])Packed.Clone();
            changed[at] ^= 0x10;
            // The last byte of the packed data has bits that nobody reads.
            var problem = Xunit.Record.Exception(() => Assert.Equal(5000, Reading.Of(new MemoryStream(changed)).Records.Count));
            Assert.True(problem is null ? at == Packed.Length - 9 : problem is ImportProblemException, $"byte {at}");
        }
    }

    [Fact]
    public void WhatFollowsTheLastMemberMustBeGzip() =>
        Assert.Contains("not gzip", Reading.ProblemOf(new MemoryStream([.. Packed, .. Encoding.UTF8.GetBytes("more rows")])).What, StringComparison.Ordinal);

    [Fact]
    public void APackedFileInAPackedFileIsRefused()
    {
        Assert.Contains("no text", Reading.ProblemOf(new MemoryStream(SomeZip.Gzip(Packed))).What, StringComparison.Ordinal);
        Assert.Contains("no text", Reading.ProblemOf(new MemoryStream(SomeZip.Gzip(SomeZip.Of(("a.csv", Header)).ToArray()))).What, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatUnpacksToTooMuchIsStopped()
    {
        var dense = SomeZip.Gzip(Header + new string('\n', 3_000_000));

        Assert.Contains("times its size", Reading.ProblemOf(new MemoryStream(dense), WithLimits(new() { UnpackedBytesBeforeRatio = 1_000_000 })).What, StringComparison.Ordinal);
        Assert.Contains("more than 100,000 bytes", Reading.ProblemOf(new MemoryStream(Packed), WithLimits(new() { UnpackedBytes = 100_000 })).What, StringComparison.Ordinal);
    }

    [Fact]
    public void TheOrderOfDatesIsProvedInsidePackedFilesToo()
    {
        var packed = SomeZip.Gzip(Header + "Fictus ruber,3/6/1998,TQ38\n" + Rows + "Fictus ruber,25/6/1998,TQ38\n");
        var reading = Reading.Of(new MemoryStream(packed));

        Assert.Equal(new DateOnly(1998, 6, 3), reading.Records[0].Dates.First);
        Assert.Equal(5002, reading.Records.Count);
    }

    private static ImportOptions WithLimits(FileLimits limits) => Reading.Options with { Limits = limits };
}
