using System.Collections.Concurrent;
using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>
/// Fronts of arriving taxa as the data told them before an import. A taxon counts as arriving when the taxon list gives its first possible year; for the others, residents above all, no model is fitted.
/// </summary>
internal sealed class KnownFronts(Func<DataSnapshot> data)
{
    private const double MetresPerKm = 1000;

    private readonly Lazy<DataSnapshot> _data = new(data);
    private readonly ConcurrentDictionary<string, Lazy<ArrivalFit?>> _fits = new(StringComparer.Ordinal);

    /// <summary>Kilometres by which a square lies beyond the line that 99 in 100 arrivals stay behind until the end of the day's year; null when it does not, and for a taxon without a front.</summary>
    public double? KmAhead(Taxon taxon, Square square, DateOnly day)
    {
        if (taxon.FirstYear is null || _fits.GetOrAdd(taxon.Id, id => new(() => FitOf(id))).Value is not { } fit)
            return null;
        var centre = Arrival.CommonCentre(square);
        return fit.KmBeyond(new(centre.Easting / MetresPerKm, centre.Northing / MetresPerKm), day.Year);
    }

    private ArrivalFit? FitOf(string id) => _data.Value.Taxa.FirstOrDefault(taxon => taxon.Id == id) is { } known ? ForecastSpread.Fit(_data.Value, known, SquareSize.Km10).Answer.Fit : null;
}
