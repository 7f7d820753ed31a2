using BenchmarkDotNet.Attributes;
using RangeMap.Grids;

namespace RangeMap.Benchmarks;

/// <summary>Grid references as text (100 m, 1 km, tetrads, 10 km) to squares; the time is that of one reference.</summary>
public class ParseReferences
{
    private readonly string[] _references = SomePlaces.References();

    /// <summary>Reads them all.</summary>
    [Benchmark(OperationsPerInvoke = SomePlaces.Count)]
    public long Parse()
    {
        long sum = 0;
        foreach (var reference in _references)
            sum += GridReference.TryParse(reference, default, out var square, out _) ? square.Code : 0;
        return sum;
    }
}
