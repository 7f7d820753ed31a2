namespace RangeMap.Records;

/// <summary>What the taxon list says for one stage.</summary>
/// <param name="Stage">Stage, caste or sex; null for what holds for every stage.</param>
/// <param name="Value">What it says.</param>
public readonly record struct StageEntry<T>(string? Stage, T Value);

/// <summary>What a column of the taxon list says for each stage, in the order of the list.</summary>
public sealed class StageTable<T>(IReadOnlyList<StageEntry<T>> entries)
{
    private readonly StageEntry<T>[] _entries = [.. entries];

    /// <summary>All entries.</summary>
    public IReadOnlyList<StageEntry<T>> Entries => _entries;

    /// <summary>True when the list says nothing.</summary>
    public bool IsEmpty => _entries.Length == 0;

    /// <summary>The entries without a copy, for checks that run on each row.</summary>
    internal ReadOnlySpan<StageEntry<T>> Span => _entries;

    /// <summary>The closest fit that any entry has to a key of <see cref="StageKind.KeyOf"/>.</summary>
    public StageFit BestFit(string? key)
    {
        var best = StageFit.None;
        foreach (ref readonly var entry in _entries.AsSpan())
        {
            var fit = StageKind.Fit(entry.Stage, key);
            if (fit > best)
                best = fit;
        }

        return best;
    }

    /// <summary>What holds for a record's stage and sex: the entries that fit best; none where the list does not know the stage.</summary>
    public IReadOnlyList<StageEntry<T>> For(string? stage, string? sex)
    {
        var key = StageKind.KeyOf(stage, sex);
        var best = BestFit(key);
        return best == StageFit.None ? [] : [.. _entries.Where(e => StageKind.Fit(e.Stage, key) == best)];
    }
}
