using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>How far grid reference and coordinates lie apart; the doubt itself is found while the place is read.</summary>
internal sealed class PlacesDisagree : IDoubtParticulars
{
    public Doubts Doubt => Doubts.PlacesDisagree;

    public string? Explain(Record record) => record.Point is { } point
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"The coordinates {point.Latitude:0.#####}, {point.Longitude:0.#####} lie {SquareDistance.Metres(record.Square, point) / 1000:0.##} km from the square {record.Square}, further than their {record.UncertaintyMetres ?? 0:0} m of uncertainty.")
        : null;
}
