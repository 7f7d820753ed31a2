namespace RangeMap.Server.Tests.Commands;

/// <summary>The review from the command line: list, decide, take back, sheet for the recorder, names accepted once.</summary>
public sealed class ReviewTests : IAsyncLifetime
{
    private const string Table = """
        occurrenceID,scientificName,eventDate,gridReference,recordedBy,locality
        a,Inventa prima,2005-06-01,NZ2563,A. Invented,=Invented Heath
        b,Inventa prima cf.,2006-06-01,NZ2664,A. Invented,<b>Invented</b>
        c,Inventa secunda,2007-06-01,NZ2765,B. Invented,
        """;

    private DataDirectory _data = null!;

    public async ValueTask InitializeAsync()
    {
        _data = await DataDirectory.WithTaxaAsync();
        Assert.Equal(3, (await _data.ImportTableAsync(Table)).Int("accepted"));
    }

    public ValueTask DisposeAsync()
    {
        _data.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task TheQueueIsListedWithDoubtsInWords()
    {
        var queue = await _data.RunAsync("records", "--queue");
        Assert.Contains("Inventa prima, NZ2664, 1 Jun 2006, A. Invented  [unreviewed]", queue.Out, StringComparison.Ordinal);
        Assert.Equal(1, queue.Out.Split("[unreviewed]").Length - 1);
        Assert.Contains("\n    ", queue.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ARecordIsRejectedAndTheDecisionTakenBack()
    {
        var before = await _data.AllMapsAsync();
        var id = await IdOfAsync("--recorder", "B. Invented");
        (await _data.RunAsync("review", "decide", id, "--status", "rejected", "--by", "R. Invented")).Failed(2, "without a reason");
        Assert.Equal(0, (await _data.RunAsync("review", "decide", id, "--status", "rejected", "--by", "R. Invented", "--reason", "A moth.")).Exit);
        Assert.NotEqual(before, await _data.AllMapsAsync());
        Assert.Contains("R. Invented: 1 records. A moth.", (await _data.RunAsync("review", "history")).Out, StringComparison.Ordinal);
        Assert.Equal(0, (await _data.RunAsync("review", "undo", "1", "--by", "R. Invented")).Exit);
        Assert.Equal(before, await _data.AllMapsAsync());
        Assert.Equal(0, (await _data.RunAsync("verify")).Exit);
    }

    [Fact]
    public async Task WhatCannotBeDecidedIsToldWithTheReason()
    {
        (await _data.RunAsync("review", "decide", "1-2", "--status", "confirmed", "--by", "R.")).Failed(1, "no record '1-2'");
        (await _data.RunAsync("review", "decide", "9-" + new string('0', 32), "--status", "confirmed", "--by", "R.")).Failed(1, "no record 9-");
        (await _data.RunAsync("review", "decide", await IdOfAsync("--limit", "1"), "--by", "R.")).Failed(2, "Nothing is decided");
        (await _data.RunAsync("review", "undo", "5", "--by", "R.")).Failed(1, "no decision number 5");
    }

    [Fact]
    public async Task ARecorderGetsASheetOfDoubtsInKindWordsAndOfDecisions()
    {
        await _data.RunAsync("review", "decide", await IdOfAsync("--queue"), "--status", "doubtful", "--by", "R. Invented", "--reason", "Is there a photograph?");
        Assert.Equal(0, (await _data.RunAsync("sheet", "A. Invented", "-o", _data.Beside("sheet.html"))).Exit);
        var html = await File.ReadAllTextAsync(_data.Beside("sheet.html"));
        Assert.Contains("Is there a photograph? (R. Invented, ", html, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;Invented", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.True(html.IndexOf("NZ2664", StringComparison.Ordinal) < html.IndexOf("NZ2563", StringComparison.Ordinal));
        Assert.DoesNotContain("B. Invented", html, StringComparison.Ordinal);

        Assert.Equal(0, (await _data.RunAsync("sheet", "A. Invented", "-o", _data.Beside("sheet.csv"))).Exit);
        var csv = await File.ReadAllTextAsync(_data.Beside("sheet.csv"));
        Assert.Equal(3, csv.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.DoesNotContain(",=Invented", csv, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ASheetForNobodyOrOfNoKnownKindIsToldSoAndNotWritten()
    {
        (await _data.RunAsync("sheet", "Z. Nobody", "-o", _data.Beside("none.html"))).Failed(1, "Z. Nobody");
        (await _data.RunAsync("sheet", "A. Invented", "-o", _data.Beside("none.doc"))).Failed(2, ".html or .csv");
        Assert.False(File.Exists(_data.Beside("none.html")));
    }

    [Fact]
    public async Task ANameIsAcceptedOnceAndForgotten()
    {
        var other = Table.Replace("Inventa secunda", "Inventa sekunda", StringComparison.Ordinal).Replace("\nc,", "\nd,", StringComparison.Ordinal);
        Assert.Equal(1, (await _data.ImportTableAsync(other)).Int("refused"));
        Assert.Equal(0, (await _data.RunAsync("names", "accept", "Inventa sekunda", "secunda", "--by", "R. Invented")).Exit);
        Assert.Equal(0, (await _data.ImportTableAsync(other)).Int("refused"));
        Assert.Contains("Inventa sekunda  is  Inventa secunda", (await _data.RunAsync("names", "list")).Out, StringComparison.Ordinal);
        Assert.Equal(0, (await _data.RunAsync("names", "forget", "inventa SEKUNDA")).Exit);
        (await _data.RunAsync("names", "forget", "Inventa sekunda")).Failed(1, "was not accepted");
        (await _data.RunAsync("names", "accept", "Inventa x", "nulla")).Failed(1, "no taxon");
    }

    private async Task<string> IdOfAsync(params string[] question)
    {
        var listed = await _data.RunAsync(["records", "--json", .. question]);
        return System.Text.Json.Nodes.JsonNode.Parse(listed.Out.Split('\n')[0])!.Text("id");
    }
}
