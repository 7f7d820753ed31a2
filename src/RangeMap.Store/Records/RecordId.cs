using System.Globalization;

namespace RangeMap.Store;

/// <summary>
/// Names a record for good: its data set and its identity there. It stays the same when the record changes, and when its
/// import is taken back and sent again.
/// </summary>
/// <param name="Dataset">Number of the data set.</param>
/// <param name="Key">Identity within it.</param>
public readonly record struct RecordId(long Dataset, UInt128 Key)
{
    /// <summary>The upper half of the key, as stored.</summary>
    internal long KeyHigh => (long)(ulong)(Key >> 64);

    /// <summary>The lower half of the key, as stored.</summary>
    internal long KeyLow => (long)(ulong)Key;

    internal static RecordId Of(long dataset, long keyHigh, long keyLow) => new(dataset, new UInt128((ulong)keyHigh, (ulong)keyLow));

    /// <summary>Reads what <see cref="ToString"/> writes; false for any other text.</summary>
    public static bool TryParse(string? text, out RecordId id)
    {
        id = default;
        if (text?.Split('-') is not [var dataset, { Length: 32 } key]
            || !long.TryParse(dataset, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || !UInt128.TryParse(key, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var identity))
        {
            return false;
        }

        id = new(number, identity);
        return true;
    }

    /// <summary>The data set's number, a hyphen and 32 hexadecimal digits.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Dataset}-{Key:x32}");
}
