using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Server;

/// <summary>A spread report in the form of machine output, the same over HTTP and on the command line.</summary>
/// <param name="Taxon">Identifier of the taxon, or the name of a table.</param>
/// <param name="Grid">Side of the squares.</param>
/// <param name="Unit">What one step of time is; speeds are kilometres per unit.</param>
/// <param name="Squares">Squares with a first record.</param>
/// <param name="FirstYear">Time of the earliest first record.</param>
/// <param name="LastYear">Time of the latest.</param>
/// <param name="Origin">Where distances are measured from.</param>
/// <param name="Estimators">One entry a method, the speed to quote first.</param>
/// <param name="Sectors">One entry a sector of bearings.</param>
/// <param name="Phases">Two phases where the speed changed; else none.</param>
/// <param name="Jumps">Squares found far ahead of the front, which is measured without them.</param>
/// <param name="OriginRange">Least and greatest front speed with the origin in each of the earliest squares; null where there is none.</param>
/// <param name="Summary">The findings in words.</param>
/// <param name="Points">Squares with year and distance, for a chart.</param>
/// <param name="Line">The line of the front.</param>
internal sealed record SpreadJson(
    string Taxon, string Grid, string Unit, int Squares, double? FirstYear, double? LastYear, OriginJson? Origin, IReadOnlyList<EstimateJson> Estimators,
    IReadOnlyList<SectorJson> Sectors, IReadOnlyList<PhaseJson> Phases, IReadOnlyList<JumpJson> Jumps, OriginRangeJson? OriginRange, string Summary, IReadOnlyList<PointJson>? Points, FrontLine? Line)
{
    // Six figures after the point are a millimetre a year: more would only show the arithmetic.
    private const int Decimals = 6;

    public static SpreadJson Of(SpreadAnswer answer)
    {
        var points = answer.Arrivals.Zip(answer.Chart.DistancesKm, (arrival, distance) => new PointJson(arrival.Square.ToString(), arrival.Year, Math.Round(distance, 3)));
        return Of(answer.Taxon.Id, answer.Size.ToText(), "year", answer.Report, answer.Origin, answer.Arrivals) with { Points = [.. points], Line = answer.Chart.Line };
    }

    public static SpreadJson Of(string name, string grid, string unit, SpreadReport report, Square? origin, IReadOnlyList<Arrival>? arrivals = null) => new(
        name, grid, unit, report.Squares, report.FirstYear, report.LastYear,
        report.Origin is { } from ? OriginJson.Of(from, origin) : null,
        [.. report.Estimators.Select(EstimateJson.Of)],
        [.. report.Sectors.Select(SectorJson.Of)],
        [.. report.Phases.Select(PhaseJson.Of)],
        [.. report.Jumps.Select(jump => JumpJson.Of(jump, arrivals))],
        OriginRangeJson.Of(report.OriginRange),
        report.Summary, null, null);

    internal static double? Round(double? value) => value is { } number ? Math.Round(number, Decimals) : null;
}

/// <summary>An origin.</summary>
internal sealed record OriginJson(string? Square, double Easting, double Northing, string How)
{
    private const double MetresPerKm = 1000;

    public static OriginJson Of(SpreadOrigin origin, Square? square) => new(
        square?.ToString(), Math.Round(origin.X * MetresPerKm), Math.Round(origin.Y * MetresPerKm),
        origin.Estimated ? FormattableString.Invariant($"mean of the {origin.Squares} earliest squares") : "given");
}

/// <summary>One estimate of speed.</summary>
internal sealed record EstimateJson(string Method, string Label, double? KmPerYear, double? Low, double? High, int N, double? FirstYear, double? LastYear, string? Note, string? Refused)
{
    public static EstimateJson Of(SpreadEstimate estimate) => new(
        estimate.Method, SpreadLabels.Of(estimate.Method), SpreadJson.Round(estimate.KmPerYear), SpreadJson.Round(estimate.Low), SpreadJson.Round(estimate.High),
        estimate.N, estimate.FirstYear, estimate.LastYear, estimate.Note, estimate.Refused);
}

/// <summary>The speed of one sector.</summary>
internal sealed record SectorJson(double Bearing, double? KmPerYear, double? Low, double? High, int N, double? FarthestKm, string? Refused)
{
    public static SectorJson Of(SectorSpeed sector) => new(
        sector.Bearing, SpreadJson.Round(sector.KmPerYear), SpreadJson.Round(sector.Low), SpreadJson.Round(sector.High), sector.N, SpreadJson.Round(sector.FarthestKm), sector.Refused);
}

/// <summary>One phase of a spread whose speed changed.</summary>
internal sealed record PhaseJson(double From, double To, double KmPerYear, double Low, double High, string Movement)
{
    public static PhaseJson Of(SpreadPhase phase) => new(
        Math.Round(phase.From, 2), Math.Round(phase.To, 2), Math.Round(phase.KmPerYear, 6), Math.Round(phase.Low, 6), Math.Round(phase.High, 6), SpreadLabels.Of(phase.Movement));
}

/// <summary>A square far ahead of the front.</summary>
internal sealed record JumpJson(string? Square, double Easting, double Northing, double Year, double KmAhead, double KmFromNearest, int Squares)
{
    private const double MetresPerKm = 1000;

    public static JumpJson Of(SpreadJump jump, IReadOnlyList<Arrival>? arrivals)
    {
        var (easting, northing) = (Math.Round(jump.X * MetresPerKm), Math.Round(jump.Y * MetresPerKm));
        var arrival = arrivals?.Cast<Arrival?>().FirstOrDefault(one => Math.Round(one!.Value.Centre.Easting) == easting && Math.Round(one.Value.Centre.Northing) == northing);
        return new(arrival?.Square.ToString(), easting, northing, jump.Time, Math.Round(jump.KmAhead, 3), Math.Round(jump.KmFromNearest, 3), jump.Squares);
    }
}

/// <summary>How much the front speed depends on the origin.</summary>
internal sealed record OriginRangeJson(int Squares, double Low, double High)
{
    public static OriginRangeJson? Of(OriginRange? range) => range is null ? null : new(range.Squares, Math.Round(range.Low, 6), Math.Round(range.High, 6));
}

/// <summary>One square of the chart.</summary>
internal sealed record PointJson(string Square, int Year, double DistanceKm);
