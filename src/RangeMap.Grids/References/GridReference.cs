namespace RangeMap.Grids;

/// <summary>Reads and writes grid references in the forms that recorders use.</summary>
public static class GridReference
{
    /// <summary>Reads a person's text. On failure <paramref name="why"/> says in a sentence what is wrong and how to mend it; else it is null.</summary>
    /// <param name="text">Such as TQ38, tq 308 801, SP10NE, SO45K, J3374, IJ3374, WV6548.</param>
    /// <param name="options">What the data set says of its references.</param>
    /// <param name="square">The square named.</param>
    /// <param name="why">The reason of a failure.</param>
    public static bool TryParse(ReadOnlySpan<char> text, GridReferenceOptions options, out Square square, out string? why) => throw new NotSupportedException();

    /// <summary>Reads a reference that a program wrote.</summary>
    /// <exception cref="FormatException">The text is no grid reference.</exception>
    public static Square Parse(string text) => throw new NotSupportedException();

    /// <summary>The square's reference without spaces: TQ, TQ38, TQ38SE, TQ38A, TQ3080, TQ308801 ...</summary>
    public static string Format(Square square) => throw new NotSupportedException();
}

/// <summary>What a data set states about its grid references.</summary>
/// <param name="ChannelIslandsWgs84">True when WA and WV references are on WGS84; else they are read on ED50.</param>
public readonly record struct GridReferenceOptions(bool ChannelIslandsWgs84 = false);
