namespace RangeMap.Records;

/// <summary>A file of records of whichever kind, whose rows can be opened from the beginning more than once.</summary>
internal abstract class RecordFile : IDisposable
{
    private readonly Stream? _stream;

    /// <param name="stream">What the rows come from; null for a folder.</param>
    protected RecordFile(Stream? stream) => _stream = stream;

    /// <summary>What the file is.</summary>
    public abstract FileDescription Description { get; }

    /// <summary>Extensions with how many of their rows filled a record, once all rows were read.</summary>
    public virtual IReadOnlyList<KeptFile> Kept => [];

    /// <summary>False for a pipe, which is gone once it was read.</summary>
    public bool CanReadTwice => _stream?.CanSeek ?? true;

    /// <summary>Opens the rows for reading; called once.</summary>
    public abstract RowSource Open();

    /// <summary>Opens the rows once more from the beginning, uses them, and leaves the first reading where it stood.</summary>
    public T ReadAgain<T>(Func<RowSource, T> use)
    {
        var resume = _stream?.Position ?? 0;
        using var rows = OpenAgain();
        var result = use(rows);
        if (_stream is not null)
            _stream.Position = resume;
        return result;
    }

    /// <summary>Closes what was opened; the stream that was handed in stays open.</summary>
    public virtual void Dispose()
    {
    }

    /// <summary>Opens the rows from the beginning while another reading is under way.</summary>
    protected abstract RowSource OpenAgain();
}
