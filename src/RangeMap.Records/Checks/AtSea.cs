using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>A record whose square lies wholly in the sea.</summary>
internal sealed class AtSea(KmAtSea sea, Func<Square, bool>? hasNoSea) : RecordCheck
{
    private readonly SquareMemo<double> _km = new();
    private readonly SquareMemo<bool> _inland = new();

    public override Doubts Doubt => Doubts.AtSea;

    public override bool Finds(Record record) => Km(record) >= 0;

    public override string? Explain(Record record) => Km(record) is >= 0 and var km
        ? string.Create(CultureInfo.InvariantCulture, $"The whole square {record.Square} lies in the sea, {km:0.#} km from the nearest land.")
        : null;

    /// <summary>Kilometres from land; negative on land or where the coast is not known.</summary>
    private double Km(Record record)
    {
        if (IsInland(record.Square))
            return -1;
        if (!_km.TryGet(record.Square, this, out var km))
            _km.Set(record.Square, this, km = sea(record.Square) ?? -1);
        return km;
    }

    /// <summary>True in a 10 km square without sea: most records lie in one, and those squares are few enough to stay at hand.</summary>
    private bool IsInland(Square square)
    {
        if (hasNoSea is null || !square.TryCoarsen(SquareSize.Km10, out var hectad))
            return false;
        if (!_inland.TryGet(hectad, this, out var inland))
            _inland.Set(hectad, this, inland = hasNoSea(hectad));
        return inland;
    }
}
