using RangeMap.Maps;
using RangeMap.Presence;

namespace RangeMap.Server;

/// <summary>What a kind of map shows, before it is put on paper.</summary>
/// <param name="Subject">What is shown, in a line.</param>
/// <param name="LegendTitle">What the numbers of the legend count.</param>
/// <param name="Classes">The classes, the first drawn first.</param>
/// <param name="Squares">The squares, of the region alone where one was asked for.</param>
/// <param name="Records">Records that these squares count.</param>
/// <param name="Omitted">Records left out of the whole map; null where that is not told.</param>
/// <param name="Fronts">Lines of a front.</param>
/// <param name="Note">What must be said of it; null for nothing.</param>
internal sealed record MapContent(
    string Subject, string LegendTitle, IReadOnlyList<PrintedClass> Classes, IReadOnlyList<PrintedSquare> Squares, long Records, Omissions? Omitted, IReadOnlyList<PrintedFront> Fronts, string? Note);
