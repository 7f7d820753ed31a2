using System.Globalization;

namespace RangeMap.Records;

/// <summary>A record whose square lies wholly in the sea.</summary>
internal sealed class AtSea(KmAtSea sea) : RecordCheck
{
    private readonly SquareMemo<double> _km = new();

    public override Doubts Doubt => Doubts.AtSea;

    public override bool Finds(Record record) => Km(record) >= 0;

    public override string? Explain(Record record) => Km(record) is >= 0 and var km
        ? string.Create(CultureInfo.InvariantCulture, $"The whole square {record.Square} lies in the sea, {km:0.#} km from the nearest land.")
        : null;

    /// <summary>Kilometres from land; negative on land or where the coast is not known.</summary>
    private double Km(Record record)
    {
        if (!_km.TryGet(record.Square, this, out var km))
            _km.Set(record.Square, this, km = sea(record.Square) ?? -1);
        return km;
    }
}
