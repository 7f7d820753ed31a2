using System.Collections.Concurrent;

namespace RangeMap.Server;

/// <summary>Values made when first asked for, and then kept. A failure is not kept: whoever asks next tries again.</summary>
internal sealed class MadeOnce<TKey, TValue>
    where TKey : notnull
{
    private readonly ConcurrentDictionary<TKey, Lazy<TValue>> _values = new();

    /// <summary>Number of values kept.</summary>
    public int Count => _values.Count;

    /// <summary>Forgets everything.</summary>
    public void Clear() => _values.Clear();

    /// <summary>The value of a key; made at most once at a time, while others wait for it.</summary>
    public TValue GetOrMake(TKey key, Func<TValue> make)
    {
        var value = _values.GetOrAdd(key, _ => new(make));
        try
        {
            return value.Value;
        }
        catch
        {
            _values.TryRemove(new(key, value));
            throw;
        }
    }
}
