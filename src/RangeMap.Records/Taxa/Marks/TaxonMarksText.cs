using System.Globalization;

namespace RangeMap.Records;

/// <summary>The columns of the taxon list that say how a taxon is recognised, read into <see cref="TaxonMarks"/> and written back.</summary>
public static class TaxonMarksText
{
    /// <summary>Weeks by stage.</summary>
    public const string Season = "season";

    /// <summary>Lengths by stage.</summary>
    public const string LengthMm = "lengthMm";

    /// <summary>Stages that exist.</summary>
    public const string Stages = "stages";

    /// <summary>Names of regions.</summary>
    public const string KnownArea = "knownArea";

    /// <summary>taxonIDs.</summary>
    public const string ConfusedWith = "confusedWith";

    /// <summary>What separates it, by stage.</summary>
    public const string Marks = "marks";

    /// <summary>What suffices, by stage.</summary>
    public const string Evidence = "evidence";

    /// <summary>Weeks of grace.</summary>
    public const string SeasonMarginWeeks = "seasonMarginWeeks";

    /// <summary>Millimetres of grace.</summary>
    public const string LengthMarginMm = "lengthMarginMm";

    /// <summary>Kilometres of grace.</summary>
    public const string AreaMarginKm = "areaMarginKm";

    /// <summary>Every column that is understood here.</summary>
    public static IReadOnlyList<string> Columns { get; } =
        [Season, LengthMm, Stages, KnownArea, ConfusedWith, Marks, Evidence, SeasonMarginWeeks, LengthMarginMm, AreaMarginKm];

    /// <summary>What is wrong with a column.</summary>
    /// <param name="Column">Its name.</param>
    /// <param name="Value">The part that was not understood.</param>
    /// <param name="Reason">How to write it.</param>
    public sealed record Fault(string Column, string Value, string Reason);

    /// <summary>Understands the columns; a column with a fault says nothing, and the first fault is given.</summary>
    /// <param name="notes">Text by column name; columns of other meaning are passed over.</param>
    /// <param name="fault">Null when all was understood.</param>
    public static TaxonMarks Read(IReadOnlyDictionary<string, string> notes, out Fault? fault)
    {
        fault = null;
        var marks = TaxonMarks.None;
        foreach (var (column, text) in notes)
        {
            marks = With(marks, column, text, out var wrong);
            fault ??= wrong;
        }

        return marks;
    }

    /// <summary>The columns that say these marks, in a form that reads back as the same.</summary>
    public static IReadOnlyDictionary<string, string> Write(TaxonMarks marks) => new Dictionary<string, string>
    {
        [Season] = StageTableText.WriteFigures(marks.Season),
        [LengthMm] = StageTableText.WriteFigures(marks.LengthMm),
        [Stages] = string.Join("; ", marks.Stages),
        [KnownArea] = marks.KnownArea.ToString(),
        [ConfusedWith] = string.Join("; ", marks.ConfusedWith),
        [Marks] = StageTableText.WriteTexts(marks.Marks),
        [Evidence] = StageTableText.WriteTexts(new([.. marks.Evidence.Entries.Select(e => new StageEntry<string>(e.Stage, e.Value.Text))])),
        [SeasonMarginWeeks] = Number(marks.SeasonMarginWeeks),
        [LengthMarginMm] = Number(marks.LengthMarginMm),
        [AreaMarginKm] = Number(marks.AreaMarginKm),
    }.Where(c => c.Value.Length > 0).ToDictionary();

    private static TaxonMarks With(TaxonMarks marks, string column, string text, out Fault? fault)
    {
        fault = null;
        switch (column)
        {
            case Season:
                if (!StageTableText.TryReadFigures<WeekSet>(text, WeekSet.TryParse, out var weeks, out var wrong))
                    fault = new(column, wrong!, "Write the weeks of the year, 1 to 53, by stage, such as \"worker 16-44; queen 9-42\"; each stage once.");
                return marks with { Season = weeks };
            case LengthMm:
                if (!StageTableText.TryReadFigures<LengthRange>(text, LengthRange.TryParse, out var lengths, out wrong))
                    fault = new(column, wrong!, "Write the lengths in mm by stage, such as \"worker 11-17; queen to 22\"; each stage once.");
                return marks with { LengthMm = lengths };
            case SeasonMarginWeeks or LengthMarginMm or AreaMarginKm:
                return WithMargin(marks, column, text, out fault);
            default:
                return WithText(marks, column, text);
        }
    }

    private static TaxonMarks WithText(TaxonMarks marks, string column, string text) => column switch
    {
        Stages => marks with { Stages = [.. Parts(text).Select(s => StageTableText.StageWord(s)).Distinct()] },
        KnownArea => marks with { KnownArea = Records.KnownArea.Parse(text) },
        ConfusedWith => marks with { ConfusedWith = Parts(text) },
        Marks => marks with { Marks = StageTableText.ReadTexts(text) },
        Evidence => marks with { Evidence = new([.. StageTableText.ReadTexts(text).Entries.Select(e => new StageEntry<SufficientEvidence>(e.Stage, SufficientEvidence.From(e.Value)))]) },
        _ => marks,
    };

    private static TaxonMarks WithMargin(TaxonMarks marks, string column, string text, out Fault? fault)
    {
        var understood = double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number);
        fault = understood ? null : new(column, text, "Write a number of 0 or more, with a point for decimals.");
        return !understood ? marks : column switch
        {
            SeasonMarginWeeks => marks with { SeasonMarginWeeks = number },
            LengthMarginMm => marks with { LengthMarginMm = number },
            _ => marks with { AreaMarginKm = number },
        };
    }

    private static string[] Parts(string text) => text.Split([';', '|', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static string Number(double? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";
}
