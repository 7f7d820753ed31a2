namespace RangeMap.Records.Tests;

public class StageMemoryTests
{
    [Fact]
    public void WhatWasKeptIsRecalledUntilSixteenNewerWaysOfWritingPushItOut()
    {
        var memory = new StageMemory();
        var worker = new StageMemory.Understood(new("worker", "female"), true, true);
        memory.Keep("worker", "", "f", worker);
        Assert.True(memory.Recall("worker", "", "f", out var meaning));
        Assert.Equal(worker, meaning);
        Assert.False(memory.Recall("", "worker", "f", out _));
        Assert.False(memory.Recall("Worker", "", "f", out _));
        for (var i = 0; i < 16; i++)
            memory.Keep($"stage {i}", "", "", default);
        Assert.False(memory.Recall("worker", "", "f", out _));
        Assert.True(memory.Recall("stage 0", "", "", out _));
    }
}
