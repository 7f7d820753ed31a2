using RangeMap.Change;

namespace RangeMap.Server;

/// <summary>The words in which outputs tell what became of a square.</summary>
internal static class FateWords
{
    public static string Of(SquareFate fate) => fate switch
    {
        SquareFate.Gained => "gained",
        SquareFate.Lost => "lost",
        SquareFate.Stable => "stable",
        SquareFate.FoundOnlyLater => "found-only-later",
        _ => "not-visited-again",
    };
}
