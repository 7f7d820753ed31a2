using RangeMap.Change;

namespace RangeMap.Server;

/// <summary>The words in which outputs tell what became of a square.</summary>
internal static class FateWords
{
    public static string Of(SquareFate fate) => fate switch
    {
        SquareFate.Gained => "gained",
        SquareFate.Lost => "lost",
        SquareFate.Kept => "kept",
        SquareFate.NotSurveyedBefore => "not-surveyed-before",
        _ => "not-surveyed-after",
    };
}
