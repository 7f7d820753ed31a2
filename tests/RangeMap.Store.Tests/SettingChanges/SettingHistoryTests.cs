namespace RangeMap.Store.Tests.SettingChanges;

/// <summary>A setting's changes all stay, and whoever saw an older one changes nothing.</summary>
public sealed class SettingHistoryTests : IDisposable
{
    private readonly SomeStore _store = new();

    private SettingHistory History => new(_store.Database, SomeStore.Clock);

    [Fact]
    public void TheNewestChangeStandsFirstAndEachIsANewEdition()
    {
        var before = _store.Edition;
        History.Change("colour", "red", "A. Organiser", "A trial.");
        History.Change("colour", null, "B. Organiser", "Back.");
        History.Change("other", "x", "B. Organiser", "Another setting.");
        _store.Reopen();
        Assert.Equal([(null, "B. Organiser", "Back."), ("red", "A. Organiser", "A trial.")], History.Read("colour").Select(change => (change.Value, change.MadeBy, change.Reason)));
        Assert.Equal(before + 3, _store.Edition);
        Assert.Empty(History.Read("nothing"));
    }

    [Fact]
    public void WhoeverSawAnOlderChangeChangesNothing()
    {
        History.Change("colour", "red", "A. Organiser", "A trial.", seen: 0);
        var edition = _store.Edition;
        var problem = Assert.Throws<StoreException>(() => History.Change("colour", "blue", "B. Organiser", "Mine.", seen: 0));
        Assert.True(problem.IsOfRequest);
        Assert.Equal((edition, "red"), (_store.Edition, History.Read("colour")[0].Value));
        History.Change("colour", "blue", "B. Organiser", "Mine.", seen: History.Read("colour")[0].Number);
        Assert.Equal("blue", History.Read("colour")[0].Value);
    }

    /// <inheritdoc/>
    public void Dispose() => _store.Dispose();
}
