namespace RangeMap.Records;

/// <summary>
/// Another record of the same taxon, square, day, recorder, stage and sex under another identity. Records dated to more than a
/// day, or without a named recorder, are not compared.
/// </summary>
internal sealed class DuplicateRecord(long expected = 0)
{
    private readonly TaggedHashes _owners = new(expected);

    /// <summary>Tells of a record that will be added soon.</summary>
    public void Expect(in ComparedRecord record, int recorder) => _owners.Expect(HashOf(record, recorder));

    /// <summary>Remembers a record; in doubt when another one like it was there.</summary>
    public Doubts Add(in ComparedRecord record, int recorder)
    {
        var owner = (ushort)((ulong)record.Key >> 48 ^ (ulong)record.Key);
        return _owners.TryGetOrAdd(HashOf(record, recorder), owner, out var first) && first != owner ? Doubts.DuplicateRecord : Doubts.None;
    }

    private static ulong HashOf(in ComparedRecord record, int recorder)
    {
        var where = MixedHash.Of((ulong)record.SquareCode, (ulong)record.Dates.First.DayNumber << 32 | (uint)recorder);
        var what = (ulong)(uint)string.GetHashCode(record.TaxonId, StringComparison.Ordinal) << 32 | WordHash(record.Stage) ^ WordHash(record.Sex) * 31 ^ (record.Present ? 0u : 1u);
        return MixedHash.Of(where, what);
    }

    private static uint WordHash(string? word) => word is null ? 0 : (uint)string.GetHashCode(word, StringComparison.Ordinal);
}
