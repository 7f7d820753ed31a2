using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>What is told of a frozen edition.</summary>
/// <param name="Id">SHA-256 of its content, 64 hexadecimal digits.</param>
/// <param name="Title">Its title.</param>
/// <param name="FrozenAt">When it was frozen, ISO 8601 in UTC.</param>
/// <param name="LiveState">Number of the live state that was frozen.</param>
/// <param name="LiveStateAt">When that state was made.</param>
/// <param name="Taxa">Taxa with records.</param>
/// <param name="Records">Records that are not rejected, an aggregate's counted once.</param>
/// <param name="Squares">10 km squares with records.</param>
/// <param name="Visits">Visits to 10 km squares.</param>
/// <param name="Demo">True for invented data.</param>
/// <param name="Licences">Licences of the data sets.</param>
/// <param name="Citation">How to cite it.</param>
public sealed record FrozenEdition(
    string Id, string Title, string FrozenAt, long LiveState, string LiveStateAt, int Taxa, long Records, int Squares, long Visits, bool Demo,
    IReadOnlyList<LicenceShare> Licences, string Citation)
{
    /// <summary>Year of publication.</summary>
    internal string Year => FrozenAt[..4];

    /// <summary>Why it was frozen; null where nobody said.</summary>
    public string? Reason { get; init; }

    /// <summary>Why it was withdrawn; null while it answers.</summary>
    public string? Withdrawn { get; init; }
}
