namespace RangeMap.Records;

/// <summary>The rows of a file of records, one at a time, whatever kind of file it is. Texts are valid until the next row is read.</summary>
internal abstract class RowSource : IDisposable
{
    /// <summary>The names of the columns, in the order of the file.</summary>
    public abstract IReadOnlyList<string> Header { get; }

    /// <summary>The character that splits <see cref="Raw"/>.</summary>
    public abstract char Separator { get; }

    /// <summary>How the characters of the file are written.</summary>
    public abstract TextEncoding Encoding { get; }

    /// <summary>How the file counts days where a cell that should be a date is a plain number; null where it has no such count.</summary>
    public virtual DayCount? DayCount => null;

    /// <summary>The order of numeric dates that the file itself states.</summary>
    public virtual DateOrder StatedDateOrder => DateOrder.NotStated;

    /// <summary>True when no row follows.</summary>
    public abstract bool AtEnd { get; }

    /// <summary>Number of fields of the row.</summary>
    public abstract int Count { get; }

    /// <summary>The line, from 1, on which the row begins.</summary>
    public abstract long Line { get; }

    /// <summary>Which file of several the row stands in; "" where there is but one.</summary>
    public virtual string Place => "";

    /// <summary>What is wrong with the row before its cells are looked at, or null.</summary>
    public abstract string? Fault { get; }

    /// <summary>True when every cell of the row is empty.</summary>
    public abstract bool IsBlank { get; }

    /// <summary>The row in one text that <see cref="RowText"/> can split again.</summary>
    public abstract ReadOnlySpan<char> Raw { get; }

    /// <summary>What was noticed about the file so far, in sentences.</summary>
    public virtual IReadOnlyList<string> Notes => [];

    /// <summary>A field of the row.</summary>
    public abstract ReadOnlySpan<char> this[int index] { get; }

    /// <summary>Moves to the next row; false at the end of the file.</summary>
    public abstract bool Read();

    /// <summary>Closes what the source opened; the stream that was handed in stays open.</summary>
    public virtual void Dispose()
    {
    }
}
