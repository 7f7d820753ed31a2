using CsCheck;
using RangeMap.Records;
using RangeMap.TestKit;

namespace RangeMap.Store.Tests;

/// <summary>One thing done to a store: an import that is kept, an import that is given up, or the undo of an earlier one.</summary>
internal sealed record Deed(DeedKind Kind, string Dataset, Record[] Records, int Earlier);

internal enum DeedKind
{
    Import,
    GivenUp,
    Undo,
}

/// <summary>Chance histories: few keys, squares and days, so that imports overlap and change one another's records.</summary>
internal static class SomeHistory
{
    private static readonly string[] Squares = ["SU", "SU12", "SU13", "SU1234", "SU1235", "TQ12A", "TQ123456"];

    private static readonly string[] Days = ["2001-05-06", "2001-05-07", "2001-05-01/2001-05-31", "2002-01-01/2002-12-31"];

    private static readonly Gen<Record> Record =
        from key in Gen.Int[1, 15]
        from square in Any(Squares)
        from day in Any(Days)
        from taxon in Gen.Int[1, 3]
        from status in Any(ReviewStatus.Unreviewed, ReviewStatus.Confirmed, ReviewStatus.Doubtful, ReviewStatus.Rejected)
        from doubts in Any(Doubts.None, Doubts.AtSea, Doubts.NameUncertain, Doubts.DatesDisagree)
        from present in Any(true, true, true, false)
        from recorder in Any<string?>("A. Invented", "B. Invented", null)
        from onList in Any(true, false, false)
        select Complete(Some.Record(square, day, Some.Taxon(taxon), key) with { Status = status, Doubts = doubts, Present = present, Recorder = recorder, OnCompleteList = onList });

    private static readonly Gen<Deed> Deed =
        from kind in Any(DeedKind.Import, DeedKind.Import, DeedKind.Import, DeedKind.GivenUp)
        from dataset in Any("one", "one", "two")
        from records in Record.Array[0, 12]
        select new Deed(kind, dataset, [.. records.DistinctBy(record => record.Key)], 0);

    private static readonly Gen<Deed> Undo = Gen.Int[1, 8].Select(earlier => new Deed(DeedKind.Undo, "", [], earlier));

    /// <summary>Imports only.</summary>
    public static Gen<Deed[]> OfImports { get; } = Deed.Array[1, 6];

    /// <summary>Imports and undos.</summary>
    public static Gen<Deed[]> WithUndos { get; } = Gen.OneOf(Deed, Undo).Array[4, 16];

    /// <summary>Does one thing; null where there is nothing to undo.</summary>
    public static ImportFigures? Do(SomeStore store, Deed deed)
    {
        if (deed.Kind == DeedKind.Import)
            return store.Import(deed.Records, dataset: deed.Dataset);
        if (deed.Kind == DeedKind.GivenUp)
        {
            using var session = ImportSession.Begin(store.Database, deed.Dataset, "given-up.csv", SomeStore.Clock);
            SomeStore.Fill(session, deed.Records, []);
        }

        return null;
    }

    private static Gen<T> Any<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    /// <summary>Gives equal records equal content and different ones different content, as a reader of files does.</summary>
    private static Record Complete(Record record)
    {
        ulong content = 17;
        foreach (var letter in $"{record.Square.Code} {record.Dates.First.DayNumber} {record.Dates.Last.DayNumber} {record.Taxon.Id} {record.Status} {record.Doubts} {record.Present} {record.Recorder} {record.OnCompleteList}")
            content = content * 1_000_003 + letter;
        return record with { Content = content };
    }
}
