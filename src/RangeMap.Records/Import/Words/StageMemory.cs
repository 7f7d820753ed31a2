namespace RangeMap.Records;

/// <summary>
/// What the last few ways of writing stage and sex meant: a file has a handful of them, and each would be looked up seven times a row (measured on 10 million rows: a
/// fortieth of the time of reading).
/// </summary>
internal sealed class StageMemory
{
    private const uint Ways = 16;
    private readonly (string Caste, string Life, string Sex, Understood Meaning)[] _ways = new (string, string, string, Understood)[Ways];
    private uint _kept;

    /// <summary>True with the meaning when these cells were kept and not yet pushed out by others.</summary>
    public bool Recall(ReadOnlySpan<char> caste, ReadOnlySpan<char> life, ReadOnlySpan<char> sex, out Understood meaning)
    {
        for (var i = 0; i < Math.Min(_kept, Ways); i++)
        {
            ref readonly var way = ref _ways[i];
            if (!life.SequenceEqual(way.Life) || !sex.SequenceEqual(way.Sex) || !caste.SequenceEqual(way.Caste))
                continue;
            meaning = way.Meaning;
            return true;
        }

        meaning = default;
        return false;
    }

    /// <summary>Keeps what cells mean, in place of the oldest.</summary>
    public void Keep(ReadOnlySpan<char> caste, ReadOnlySpan<char> life, ReadOnlySpan<char> sex, Understood meaning) =>
        _ways[_kept++ % Ways] = (caste.ToString(), life.ToString(), sex.ToString(), meaning);

    /// <summary>Stage and sex, and whether each cell was understood.</summary>
    internal readonly record struct Understood(StageAndSex Read, bool KnowsStage, bool KnowsSex);
}
