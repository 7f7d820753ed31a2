using System.Numerics;

namespace RangeMap.Change;

/// <summary>Which taxa were found in which square, a bit each.</summary>
internal sealed class SpeciesBits
{
    private readonly ulong[] _bits;
    private readonly int _words;

    private SpeciesBits(int squares, int taxa) => (_words, _bits) = ((taxa + 63) / 64, new ulong[(long)squares * ((taxa + 63) / 64)]);

    /// <summary>The finds of one period.</summary>
    internal static SpeciesBits Of(GroupSurvey survey, SurveyPeriod period) => Pooled(survey, [period]);

    /// <summary>The finds of several periods together.</summary>
    internal static SpeciesBits Pooled(GroupSurvey survey, IEnumerable<SurveyPeriod> periods)
    {
        var bits = new SpeciesBits(survey.Squares.Count, survey.Taxa);
        foreach (var period in periods)
        {
            for (var square = 0; square < survey.Squares.Count; square++)
            {
                foreach (var find in period.Found.InSquare(square))
                    bits._bits[square * bits._words + find.Index / 64] |= 1UL << find.Index;
            }
        }

        return bits;
    }

    /// <summary>True where the taxon was found in the square.</summary>
    internal bool Has(int square, int taxon) => (_bits[square * _words + taxon / 64] >> taxon & 1) != 0;

    /// <summary>Number of taxa found in the square.</summary>
    internal int Count(int square)
    {
        var sum = 0;
        foreach (var word in Row(square))
            sum += BitOperations.PopCount(word);
        return sum;
    }

    /// <summary>Number of taxa found in both squares.</summary>
    internal int Common(int a, int b)
    {
        var sum = 0;
        ReadOnlySpan<ulong> rowA = Row(a), rowB = Row(b);
        for (var i = 0; i < rowA.Length; i++)
            sum += BitOperations.PopCount(rowA[i] & rowB[i]);
        return sum;
    }

    private ReadOnlySpan<ulong> Row(int square) => _bits.AsSpan(square * _words, _words);
}
