using System.Globalization;

namespace RangeMap.Records;

/// <summary>
/// A record none of whose possible days touches a week in which its stage is about, as the taxon list has it; where no
/// stage is stated, a week in which any is.
/// </summary>
internal sealed class OutOfSeason(CheckLimits limits) : RecordCheck
{
    private const int ListedSlotBits = 12;

    private readonly ReferenceMemo<StageWeeks> _listed = new(ListedSlotBits);
    private Record? _last;
    private bool _lastFound;

    public override Doubts Doubt => Doubts.OutOfSeason;

    /// <summary>The check of the stage against the date asks again about the same record, and is answered from memory.</summary>
    public override bool Finds(Record record)
    {
        if (!ReferenceEquals(record, _last))
            (_last, _lastFound) = (record, IsOut(record));
        return _lastFound;
    }

    public override string? Explain(Record record)
    {
        if (!Finds(record))
            return null;
        var weeks = record.Taxon.Marks.Season.For(record.Stage, record.Sex).Select(e => $"{StagePhrase.Plural(e.Stage)} in weeks {e.Value}");
        return string.Create(
            CultureInfo.InvariantCulture,
            $"The record is dated {DayWords.Of(record.Dates)}, week {WeekSet.Of(record.Dates)} of the year. The list has {record.Taxon.ScientificName} about: {string.Join("; ", weeks)}.");
    }

    /// <summary>True when another stage than the record's is about in its weeks.</summary>
    public bool OthersAreAbout(Record record) => ListedWeeks(record).OfAny.Meets(WeeksOf(record));

    private bool IsOut(Record record) =>
        record.Present && !record.Taxon.Marks.Season.IsEmpty && !ListedWeeks(record).OfStage.Meets(WeeksOf(record));

    private StageWeeks ListedWeeks(Record record)
    {
        var (season, stage) = (record.Taxon.Marks.Season, StageKind.KeyOf(record.Stage, record.Sex));
        if (!_listed.TryGet(season, stage, out var weeks))
            _listed.Set(season, stage, weeks = StageWeeks.Of(season, stage));
        return weeks;
    }

    /// <summary>The weeks of the record's days, widened by the weeks of grace.</summary>
    internal WeekSet WeeksOf(Record record)
    {
        var weeks = WeekSet.Of(record.Dates);
        var margin = (int)(record.Taxon.Marks.SeasonMarginWeeks ?? limits.SeasonMarginWeeks);
        return margin > 0 ? weeks.Widened(Math.Min(margin, WeekSet.Most)) : weeks;
    }
}
