using System.Runtime.InteropServices;

namespace RangeMap.Change;

/// <summary>The squares of one period that tell of a taxon, and the time factor solved from them.</summary>
internal sealed class PeriodFactor
{
    private readonly List<double> _foreseen = [];
    private readonly List<bool> _found = [];

    /// <summary>Squares with effort whose neighbourhood has the taxon.</summary>
    internal List<int> Squares { get; } = [];

    /// <summary>In how many of them it was found.</summary>
    internal int Found { get; private set; }

    /// <summary>The time factor; null before it is solved and where there is none.</summary>
    internal double? Factor { get; private set; }

    internal void Add(int square, double foreseen, bool found)
    {
        Squares.Add(square);
        _foreseen.Add(foreseen);
        _found.Add(found);
        Found += found ? 1 : 0;
    }

    internal void Solve() => Factor = TimeFactor.Solve(CollectionsMarshal.AsSpan(_foreseen), Found);

    /// <summary>Adds to each block what its squares contribute to the error of ln x: (v - p) / (x sum of Q (1 - p)).</summary>
    internal void AddInfluence(double sign, double[] sums, bool[] finds, int[] blocks)
    {
        var x = Factor!.Value;
        double slope = 0;
        foreach (var q in _foreseen)
            slope += q * x * Math.Exp(-q * x);
        for (var i = 0; i < Squares.Count; i++)
        {
            var block = blocks[Squares[i]];
            sums[block] += sign * ((_found[i] ? 1 : 0) - 1 + Math.Exp(-_foreseen[i] * x)) / slope;
            finds[block] |= _found[i];
        }
    }
}
