namespace RangeMap.Records;

/// <summary>Mixes numbers into 64 bits, for tables that live no longer than the process.</summary>
internal static class MixedHash
{
    /// <summary>A hash of two numbers, by the finishing steps of the SplitMix64 generator (Steele, Lea and Flood 2014).</summary>
    public static ulong Of(ulong a, ulong b)
    {
        var z = a * 0x9E3779B97F4A7C15 ^ b;
        z = (z ^ z >> 30) * 0xBF58476D1CE4E5B9;
        z = (z ^ z >> 27) * 0x94D049BB133111EB;
        return z ^ z >> 31;
    }
}
