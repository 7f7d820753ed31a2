using System.Collections.Concurrent;

namespace RangeMap.Server;

/// <summary>Values made when first asked for, and then kept. A failure is not kept: whoever asks next tries again.</summary>
internal sealed class MadeOnce<TKey, TValue>
    where TKey : notnull
{
    private readonly ConcurrentDictionary<TKey, Lazy<TValue>> _values = new();
    private int _count;

    /// <summary>About how many values are kept; the dictionary's own count would lock it as a whole.</summary>
    public int Count => Volatile.Read(ref _count);

    /// <summary>Forgets everything.</summary>
    public void Clear()
    {
        Interlocked.Exchange(ref _count, 0);
        _values.Clear();
    }

    /// <summary>The value of a key; made at most once at a time, while others wait for it.</summary>
    public TValue GetOrMake(TKey key, Func<TValue> make)
    {
        if (!_values.TryGetValue(key, out var value))
            value = Add(key, new(make));
        try
        {
            return value.Value;
        }
        catch
        {
            if (_values.TryRemove(new(key, value)))
                Interlocked.Decrement(ref _count);
            throw;
        }
    }

    private Lazy<TValue> Add(TKey key, Lazy<TValue> made)
    {
        var value = _values.GetOrAdd(key, made);
        if (ReferenceEquals(value, made))
            Interlocked.Increment(ref _count);
        return value;
    }
}
