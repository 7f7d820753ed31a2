using System.Globalization;

namespace RangeMap.Records;

/// <summary>
/// A length outside the range that the taxon list gives for the record's stage or sex; where neither is stated, outside all its
/// ranges taken together.
/// </summary>
internal sealed class LengthOutOfRange(CheckLimits limits) : RecordCheck
{
    public override Doubts Doubt => Doubts.LengthOutOfRange;

    public override bool Finds(Record record) =>
        record.LengthMm is { } mm && RangeFor(record) is { } range && Math.Abs(range.Beyond(mm)) > (record.Taxon.Marks.LengthMarginMm ?? limits.LengthMarginMm);

    public override string? Explain(Record record)
    {
        if (!Finds(record))
            return null;
        var (mm, range) = (record.LengthMm!.Value, RangeFor(record)!.Value);
        var beyond = range.Beyond(mm);
        var stage = StagePhrase.Singular(StageKind.KeyOf(record.Stage, record.Sex));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{mm:0.#} mm is {Math.Abs(beyond):0.#} mm {(beyond > 0 ? "longer" : "shorter")} than any {stage} of {record.Taxon.ScientificName} in the list ({range} mm).");
    }

    private static LengthRange? RangeFor(Record record)
    {
        var lengths = record.Taxon.Marks.LengthMm;
        if (lengths.IsEmpty || !record.Present)
            return null;
        var key = StageKind.KeyOf(record.Stage, record.Sex);
        var fit = lengths.BestFit(key);
        LengthRange? range = null;
        foreach (ref readonly var entry in lengths.Span)
        {
            if (fit != StageFit.None && StageKind.Fit(entry.Stage, key) == fit)
                range = range?.With(entry.Value) ?? entry.Value;
        }

        return range;
    }
}
