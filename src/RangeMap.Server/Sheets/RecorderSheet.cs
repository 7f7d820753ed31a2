using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>What goes back to a recorder: each record, what it is in doubt for in kind words, what was decided and why.</summary>
internal sealed class RecorderSheet
{
    private readonly DataFolder _folder;
    private readonly DataSnapshot _data;
    private readonly RecordWords _words;
    private readonly DecisionHistory _decisions;

    public RecorderSheet(DataFolder folder, DataSnapshot data, string recorder)
    {
        _folder = folder;
        _data = data;
        Recorder = recorder;
        _words = new(folder, data);
        _decisions = new(folder.Database);
    }

    /// <summary>The recorder, as records name them.</summary>
    public string Recorder { get; }

    /// <summary>The edition of the data that the sheet tells of.</summary>
    public Edition Edition => _data.Edition;

    /// <summary>The lines, those with doubts or decisions first, each group in the order in which the records came.</summary>
    /// <exception cref="UserException">No record names the recorder.</exception>
    public IEnumerable<SheetLine> Lines()
    {
        var any = false;
        foreach (var line in All().Where(line => line.NeedsReading).Concat(All().Where(line => !line.NeedsReading)))
        {
            any = true;
            yield return line;
        }

        if (!any)
            throw Unknown();
    }

    /// <summary>Asks for a first line, so that a recorder without records is told before anything is written.</summary>
    /// <exception cref="UserException">No record names the recorder.</exception>
    public RecorderSheet Checked() => new RecordStore(_folder.Database).Find(new() { Recorder = Recorder, Limit = 1 }).Records.Count > 0 ? this : throw Unknown();

    private UserException Unknown() =>
        new($"No record names '{Recorder}' as its recorder.", "recorder", "Write the name exactly as the records have it.", StatusCodes.Status404NotFound);

    private IEnumerable<SheetLine> All() => new RecordStore(_folder.Database).All(new() { Recorder = Recorder }).Select(LineOf);

    private SheetLine LineOf(StoredRecord record)
    {
        var doubts = _words.Of(record).Where(words => DoubtCatalogue.Of(words.Doubt).Weight > 0).ToList();
        var decision = record is { SentStatus: null, SentTaxon: null, Doubts: 0 } && record.ReviewStatus == ReviewStatus.Unreviewed
            ? null
            : _decisions.Of(record.Id).LastOrDefault(step => step.Basis == record.Basis);
        return new(record, _data.Taxon((int)record.Taxon).ScientificName, record.SentTaxon is { } sent ? _data.NameOf((int)sent) : null, doubts, decision);
    }
}

/// <summary>A record on a recorder's sheet.</summary>
/// <param name="Record">The record.</param>
/// <param name="Taxon">The name that it counts under.</param>
/// <param name="SentTaxon">The name that was sent, where a reviewer named it afresh.</param>
/// <param name="Doubts">What is asked about it.</param>
/// <param name="Decision">What was decided on it last; null where nothing was.</param>
internal sealed record SheetLine(StoredRecord Record, string Taxon, string? SentTaxon, IReadOnlyList<DoubtWords> Doubts, PastDecision? Decision)
{
    /// <summary>True for a line that the recorder should look at.</summary>
    public bool NeedsReading => Doubts.Count > 0 || Decision is not null;

    /// <summary>What was decided, in kind words; empty where nothing was.</summary>
    public string DecisionWords
    {
        get
        {
            if (Decision is null)
                return "";
            var named = SentTaxon is null ? "" : $"Named {Taxon} by the reviewer. ";
            return $"{named}{StatusWords}{(Decision.Reason.Length > 0 ? $" {Decision.Reason}" : "")} ({Decision.MadeBy}, {Decision.MadeAt[..10]})";
        }
    }

    private string StatusWords => Record.ReviewStatus switch
    {
        ReviewStatus.Confirmed => "Confirmed, with thanks.",
        ReviewStatus.Doubtful => "We are not sure yet.",
        ReviewStatus.Rejected => "Not taken onto the map.",
        _ => "Waiting for a reviewer.",
    };
}
