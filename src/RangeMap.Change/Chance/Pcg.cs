namespace RangeMap.Change;

/// <summary>
/// A seeded stream of chance that gives the same numbers on every machine: PCG-XSH-RR with 64 bits of state and
/// 32 bits of output (O'Neill 2014, PCG: A family of simple fast space-efficient statistically good algorithms
/// for random number generation, Harvey Mudd College, HMC-CS-2014-0905).
/// </summary>
/// <remarks>
/// A mutable value: pass it by <c>ref</c>, or two places draw the same numbers. Only integer steps and exactly
/// rounded arithmetic are used (no logarithm or sine), so that no processor or library can change a result.
/// </remarks>
public struct Pcg
{
    private const ulong Multiplier = 6364136223846793005;
    private readonly ulong _increment;
    private ulong _state;

    /// <summary>Starts a stream.</summary>
    /// <param name="seed">Where in the stream to start.</param>
    /// <param name="stream">Which of 2^63 streams; different streams with one seed are independent.</param>
    public Pcg(ulong seed, ulong stream = 0)
    {
        _increment = (stream << 1) | 1;
        NextUInt();
        _state += seed;
        NextUInt();
    }

    /// <summary>The next 32 random bits.</summary>
    public uint NextUInt()
    {
        var old = _state;
        _state = old * Multiplier + _increment;
        var shifted = (uint)(((old >> 18) ^ old) >> 27);
        return uint.RotateRight(shifted, (int)(old >> 59));
    }

    /// <summary>Uniform in [0, 1), in steps of 2^-32.</summary>
    public double NextUnit() => NextUInt() * (1.0 / 4294967296.0);

    /// <summary>Uniform whole number in [0, <paramref name="count"/>).</summary>
    /// <param name="count">At least 1. The bias of the multiplication is below count / 2^32.</param>
    public int NextIndex(int count) => (int)(((ulong)NextUInt() * (uint)count) >> 32);

    /// <summary>True with the given probability.</summary>
    public bool NextChance(double probability) => NextUnit() < probability;

    /// <summary>
    /// Nearly standard normal: the sum of twelve uniform numbers less six, which has mean 0, standard deviation 1 and
    /// no value beyond 6. Enough for the scatter of invented dates, and free of logarithms.
    /// </summary>
    public double NextNormal()
    {
        var sum = -6.0;
        for (var i = 0; i < 12; i++)
            sum += NextUnit();
        return sum;
    }
}
