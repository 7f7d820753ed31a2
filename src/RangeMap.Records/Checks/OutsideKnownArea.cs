using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>
/// A record from outside the area that the taxon list names, or wholly within a region or island that it excepts. Regions whose
/// names nobody knows are passed over; when none is known, the check is silent.
/// </summary>
internal sealed class OutsideKnownArea(CheckContext context) : RecordCheck
{
    private readonly SquareMemo<Verdict> _verdicts = new();

    public override Doubts Doubt => Doubts.OutsideKnownArea;

    public override bool Finds(Record record) =>
        record.Present && !record.Taxon.Marks.KnownArea.IsEverywhere && VerdictOn(record) is var verdict
        && (verdict.Excepted is not null || verdict.Km > (record.Taxon.Marks.AreaMarginKm ?? context.Limits.AreaMarginKm));

    public override string? Explain(Record record)
    {
        if (!Finds(record))
            return null;
        var (km, excepted, nearest) = VerdictOn(record);
        if (excepted is not null)
            return $"{record.Taxon.ScientificName} is not known from {excepted}, where {record.Square} lies.";
        var island = context.IslandOf?.Invoke(record.Square) is { } name ? $" on the island {name}" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{record.Square}{island} lies {km:0.#} km outside the area from which {record.Taxon.ScientificName} is known (nearest: {nearest}).");
    }

    /// <param name="Km">Kilometres to the nearest part of the known area; 0 inside or where no name is known.</param>
    /// <param name="Excepted">The excepted region in which the square lies.</param>
    /// <param name="Nearest">The nearest part of the known area.</param>
    private readonly record struct Verdict(double Km, string? Excepted, string? Nearest);

    private Verdict VerdictOn(Record record)
    {
        if (!_verdicts.TryGet(record.Square, record.Taxon, out var verdict))
            _verdicts.Set(record.Square, record.Taxon, verdict = Judge(record.Taxon.Marks.KnownArea, record.Square));
        return verdict;
    }

    private Verdict Judge(KnownArea area, Square square)
    {
        var island = context.IslandOf?.Invoke(square);
        bool IsIsland(string name) => name.Equals(island, StringComparison.OrdinalIgnoreCase);
        if (area.NotIn.FirstOrDefault(name => IsIsland(name) || context.Areas?.Covers(name, square) == true) is { } excepted)
            return new(0, excepted, null);
        Verdict? nearest = null;
        foreach (var name in area.Within)
        {
            var km = IsIsland(name) ? 0 : context.Areas?.KmOutside(name, square);
            if (km < (nearest?.Km ?? double.PositiveInfinity))
                nearest = new(km.Value, null, name);
        }

        return nearest ?? default;
    }
}
