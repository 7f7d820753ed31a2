namespace RangeMap.Records;

/// <summary>What became of the rows read so far. Read is always Accepted + Refused.</summary>
public sealed class ImportCounts
{
    private readonly long[] _doubts = new long[32];

    /// <summary>Rows read, without blank ones.</summary>
    public long Read => Accepted + Refused;

    /// <summary>Rows that became records.</summary>
    public long Accepted { get; private set; }

    /// <summary>Rows that were refused.</summary>
    public long Refused { get; private set; }

    /// <summary>Records that stand on a complete list of their visit.</summary>
    public long OnCompleteLists { get; private set; }

    /// <summary>Rows in which every cell is empty; they are passed over.</summary>
    public long Blank { get; internal set; }

    /// <summary>Records per doubt, without doubts that no record has.</summary>
    public IReadOnlyDictionary<Doubts, long> Doubts => Enumerable.Range(0, _doubts.Length)
        .Where(bit => _doubts[bit] > 0)
        .ToDictionary(bit => (Doubts)(1 << bit), bit => _doubts[bit]);

    internal void Count(Record record)
    {
        Accepted++;
        OnCompleteLists += record.OnCompleteList ? 1 : 0;
        for (var bits = (uint)record.Doubts; bits != 0; bits &= bits - 1)
            _doubts[System.Numerics.BitOperations.TrailingZeroCount(bits)]++;
    }

    internal void CountRefusal() => Refused++;
}
