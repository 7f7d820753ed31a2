using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>How to tell a taxon from those that it is confused with, by sex, caste or stage.</summary>
/// <param name="Marks">What separates it.</param>
/// <param name="Evidence">What suffices to name it.</param>
/// <param name="ConfusedWith">The taxa that it is mistaken for, with their own marks.</param>
/// <param name="Aggregate">Where a record belongs that cannot be told apart; null where the list has no aggregate.</param>
internal sealed record MarksJson(IReadOnlyList<MarkJson> Marks, IReadOnlyList<MarkJson> Evidence, IReadOnlyList<ConfusedJson> ConfusedWith, string? Aggregate)
{
    /// <summary>Makes it; null where the list says nothing.</summary>
    /// <param name="data">Names the other taxa.</param>
    /// <param name="taxon">The taxon.</param>
    /// <param name="stage">The stage whose marks are wanted; null for all.</param>
    public static MarksJson? Of(DataSnapshot data, Taxon taxon, string? stage = null)
    {
        var others = taxon.Marks.ConfusedWith.Select(id => data.List.FindById(id)).OfType<Taxon>()
            .Select(other => new ConfusedJson(other.Id, other.ScientificName, other.VernacularName, For(other.Marks.Marks, stage, text => text))).ToList();
        var marks = For(taxon.Marks.Marks, stage, text => text);
        var evidence = For(taxon.Marks.Evidence, stage, what => what.Text);
        var aggregate = taxon.AggregateId is { } id ? data.List.FindById(id)?.ScientificName : null;
        return marks.Count + evidence.Count + others.Count == 0 ? null : new(marks, evidence, others, aggregate);
    }

    private static List<MarkJson> For<T>(StageTable<T> table, string? stage, Func<T, string> words)
    {
        var entries = stage is null ? table.Entries : table.For(stage, sex: null);
        return [.. (entries.Count == 0 ? table.Entries : entries).Select(entry => new MarkJson(entry.Stage, words(entry.Value)))];
    }
}

/// <summary>What the list says for one stage.</summary>
/// <param name="Stage">Sex, caste or stage; null for all.</param>
/// <param name="Words">What it says.</param>
internal sealed record MarkJson(string? Stage, string Words);

/// <summary>A taxon that another is mistaken for.</summary>
internal sealed record ConfusedJson(string Taxon, string ScientificName, string? VernacularName, IReadOnlyList<MarkJson> Marks);
