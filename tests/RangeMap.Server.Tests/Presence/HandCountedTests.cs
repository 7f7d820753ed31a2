namespace RangeMap.Server.Tests.Presence;

/// <summary>A file of 23 rows, its maps counted by hand. The reasons stand beside the rows.</summary>
public sealed class HandCountedTests : IAsyncLifetime
{
    private const string Early = "../1999", Middle = "2000/2009", Late = "2010/..";
    private const string Periods = $"{Early},{Middle},{Late}";

    // NZ2563 lies in NZ26L (4-6 km E, 2-4 km N of the hectad's corner) and NZ26SE; NZ2463 in NZ26L and NZ26SW; tetrad L straddles SW and SE.
    // J3374 lies in J37H and J37SW. WV6548 lies in WV64P and WV64NE. The point of r15 and r16 is easting 651.4 km, northing 313.2 km:
    // 50 m round it fit in TG5113 (and not in 100 m, its easting lies within 50 m of a line); 700 m fit in TG51SW (and in no tetrad).
    private const string Table = """
        occurrenceID,scientificName,eventDate,gridReference,decimalLatitude,decimalLongitude,coordinateUncertaintyInMeters,geodeticDatum,identificationVerificationStatus,occurrenceStatus,individualCount
        r01,Inventa prima,1995-06-01,NZ2563,,,,,confirmed,,
        r02,Inventa prima,1995-06-02,NZ2563,,,,,,,2
        r03,Inventa prima,2005-07-01,NZ256634,,,,,confirmed,,
        r04,Inventa prima,2005,NZ26L,,,,,,,
        r05,Inventa prima,2005-07-02,NZ26,,,,,,,
        r06,Inventa prima,1999-12-31/2000-01-01,NZ2563,,,,,confirmed,,
        r07,Inventa prima,2012-05-01,NZ2563,,,,,rejected,,
        r08,Inventa prima,2012-05-02,NZ2563,,,,,doubtful,,
        r09,Inventa cf. prima,2012-05-03,NZ2563,,,,,,,
        r10,Inventa prima,2012-05-04,NZ2563,,,,,,absent,
        r11,Inventa prima,2012-05-05,NZ2563,,,,,,,0
        r12,Inventa prima,2012-06,NZ2463,,,,,,,
        r13,Inventa prima,2015-01-01,J3374,,,,,confirmed,,
        r14,Inventa prima,1988,J37,,,,,,,
        r15,Inventa prima,2003-03-03,,52.658007,1.716074,50,WGS84,,,
        r16,Inventa prima,2003-03-04,,52.658007,1.716074,700,WGS84,,,
        r17,Inventa prima,2001-01-01,WV6548,,,,,,,
        r18,Inventa secunda,2005-07-01,NZ2563,,,,,confirmed,,
        r19,Inventa gemella agg.,2005-07-03,NZ2563,,,,,,,
        r20,Inventa prima agg.,2011-01-01,NZ2563,,,,,,,
        r21,Inventa prima,2030-01-01,NZ2563,,,,,,,
        r22,Inventa nulla,2005-07-01,NZ2563,,,,,,,
        r23,Inventa tertia,2005-07-01,NZ2563,,,,,,,
        """;

    private DataDirectory _data = null!;

    public async ValueTask InitializeAsync()
    {
        _data = await DataDirectory.WithTaxaAsync();
        var json = await _data.ImportTableAsync(Table);
        // r21 lies in the future, r22 has an unknown name.
        Assert.Equal((23, 21, 2), (json.Int("read"), json.Int("accepted"), json.Int("refused")));
    }

    public ValueTask DisposeAsync()
    {
        _data.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public Task TenKilometresUsable() => ExpectAsync(
        "prima", "10km", "usable",
        ("NZ26", Early, 2), // r01 r02; r06 lies across the end of the period
        ("NZ26", Middle, 3), // r03 r04 r05
        ("NZ26", Late, 1), // r12; r07 is rejected, r08 doubtful, r09 has a serious doubt, r10 and r11 are absences
        ("J37", Early, 1), // r14
        ("J37", Late, 1), // r13
        ("TG51", Middle, 2), // r15 r16
        ("WV64", Middle, 1)); // r17

    [Fact]
    public Task FiveKilometresUsable() => ExpectAsync(
        "prima", "5km", "usable",
        ("NZ26SE", Early, 2), // r01 r02
        ("NZ26SE", Middle, 1), // r03; r04's tetrad straddles two quadrants, r05 is coarser
        ("NZ26SW", Late, 1), // r12
        ("J37SW", Late, 1), // r13
        ("TG51SW", Middle, 2), // r15 r16
        ("WV64NE", Middle, 1)); // r17

    [Fact]
    public Task TwoKilometresUsable() => ExpectAsync(
        "prima", "2km", "usable",
        ("NZ26L", Early, 2), // r01 r02
        ("NZ26L", Middle, 2), // r03 r04
        ("NZ26L", Late, 1), // r12
        ("J37H", Late, 1), // r13
        ("TG51B", Middle, 1), // r15; the 700 m of r16 fit in no tetrad
        ("WV64P", Middle, 1)); // r17

    [Fact]
    public Task OneKilometreUsable() => ExpectAsync(
        "prima", "1km", "usable",
        ("NZ2563", Early, 2), ("NZ2563", Middle, 1), ("NZ2463", Late, 1), ("J3374", Late, 1), ("TG5113", Middle, 1), ("WV6548", Middle, 1));

    [Fact]
    public Task HundredMetresUsable() => ExpectAsync("prima", "100m", "usable", ("NZ256634", Middle, 1));

    [Fact]
    public Task TenKilometresConfirmed() => ExpectAsync(
        "prima", "10km", "confirmed",
        ("NZ26", Early, 1), // r01
        ("NZ26", Middle, 1), // r03
        ("J37", Late, 1)); // r13

    [Fact]
    public Task TenKilometresAll() => ExpectAsync(
        "prima", "10km", "all",
        ("NZ26", Early, 2), ("NZ26", Middle, 3),
        ("NZ26", Late, 3), // r12 and now r08, r09; r07 is rejected and never maps
        ("J37", Early, 1), ("J37", Late, 1), ("TG51", Middle, 2), ("WV64", Middle, 1));

    [Fact]
    public Task AMemberDoesNotTakeWhatWasRecordedAsTheAggregate() => ExpectAsync("secunda", "1km", "usable", ("NZ2563", Middle, 1)); // r18, not r19

    [Fact]
    public Task TheAggregateTakesItsMembersRecords() => ExpectAsync(
        "gemella-agg", "1km", "usable",
        ("NZ2563", Early, 2), // r01 r02
        ("NZ2563", Middle, 3), // r03, r18 of the other member, r19 of its own
        ("NZ2563", Late, 1), // r20
        ("NZ2463", Late, 1), ("J3374", Late, 1), ("TG5113", Middle, 1), ("WV6548", Middle, 1));

    [Fact]
    public async Task WhatIsLeftOutIsReported()
    {
        var run = await _data.RunAsync("presence", "prima", "--grid", "2km", "--periods", Periods);
        // Too coarse: r05 r14 r16. Between the periods: r06. Below the quality: r08 r09.
        Assert.Contains("3 records too coarse for these squares, 1 between the periods, 2 below the quality", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task VisitsAreThoseOfTheGroupOnKnownDays()
    {
        var run = await _data.RunAsync("presence", "prima", "--periods", Periods);
        // NZ26. Early: the days of r01 and r02. Middle: 1, 2 and 3 July 2005, of r03 with r18 and r23, r05, r19. Late: the days of
        // r08 to r11 in 2012 and of r20: a doubtful record and an absence still make a visit, a rejected record does not.
        var visits = run.Out.Split("\r\n").Where(line => line.StartsWith("NZ26,", StringComparison.Ordinal)).Select(line => line.Split(',')[5]);
        Assert.Equal(["2", "3", "5"], visits);
    }

    private async Task ExpectAsync(string taxon, string grid, string quality, params (string Square, string Period, int Records)[] expected)
    {
        var counts = await _data.CountsAsync(taxon, grid, Periods, quality);
        Assert.Equal(expected.ToDictionary(row => (row.Square, row.Period), row => row.Records), counts);
    }
}
