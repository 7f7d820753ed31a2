namespace RangeMap.Records;

/// <summary>Events described by the Humboldt Extension (http://rs.tdwg.org/eco/terms/), which tells whether the list of an event is complete.</summary>
internal sealed class CompletenessTable : ExtensionTable
{
    /// <summary>The term that tells it.</summary>
    public const string Column = "isTaxonomicScopeFullyReported";

    /// <inheritdoc/>
    public override IReadOnlyList<Term> Terms { get; } = [Term.CompleteList];

    /// <inheritdoc/>
    public override bool TellsOfCore => true;

    /// <inheritdoc/>
    public override ExtensionCells? Read(ExtensionRow row) => ListWords.Read(row[Column]) is { } complete ? new(Complete: complete ? "yes" : "no") : null;
}
