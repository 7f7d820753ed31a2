using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>The place that latitude and longitude give, with their uncertainty and datum.</summary>
/// <param name="Point">On WGS84.</param>
/// <param name="Grid">The national grid of the place; null outside all of them.</param>
/// <param name="UncertaintyMetres">Radius of the circle that holds the place, with the error of a datum's shift.</param>
/// <param name="Doubts">What is doubtful about it.</param>
internal readonly record struct CoordinatePlace(LatLon Point, INationalGrid? Grid, double UncertaintyMetres, Doubts Doubts)
{
    /// <summary>Added where the datum's name is not known: none of the region is further than this from WGS84, in metres (ED50 is the furthest, about 240 m).</summary>
    private const double UnknownDatumMetres = 250;

    /// <summary>Errors of a shift below this vanish beside what a recorder can know.</summary>
    private const double LeastShiftErrorMetres = 1;

    /// <summary>No datum of the region moves a place by as much, in degrees; a shift that does was made far from where its formula holds.</summary>
    private const double MostShiftDegrees = 0.01;

    /// <summary>Further decimals say nothing: the fifteenth is a ten-thousandth of a micrometre.</summary>
    private const int MostDecimals = 15;

    /// <summary>Reads the cells of a row; both coordinates must be there.</summary>
    public static bool TryRead(ReadOnlySpan<char> latitude, ReadOnlySpan<char> longitude, ReadOnlySpan<char> uncertainty, ReadOnlySpan<char> datum, out CoordinatePlace place, out RowFault? fault)
    {
        place = default;
        if (!DegreesText.TryParse(latitude, 90, out var north, out var why))
            fault = new(Term.DecimalLatitude, latitude.ToString(), why!);
        else if (!DegreesText.TryParse(longitude, 180, out var east, out why))
            fault = new(Term.DecimalLongitude, longitude.ToString(), why!);
        else if (north.Degrees == 0 && east.Degrees == 0)
            fault = new(Term.DecimalLatitude, "0, 0", "0, 0 lies in the Gulf of Guinea and usually means that no place was known. Give the place or leave the row out.");
        else if (!TryReadUncertainty(uncertainty, out var stated))
            fault = new(Term.CoordinateUncertaintyInMeters, uncertainty.ToString(), "The uncertainty must be a number of metres above 0, or empty if it is not known.");
        else
            return TryPlace(north, east, stated, DatumName.Read(datum), out place, out fault);
        return false;
    }

    private static bool TryPlace(DegreesText north, DegreesText east, double? stated, StatedDatum datum, out CoordinatePlace place, out RowFault? fault)
    {
        fault = null;
        var doubts = datum.Known is null ? Doubts.DatumAssumed : Doubts.None;
        var point = OnWgs84(new(north.Degrees, east.Degrees), datum);
        var grid = NationalGrid.ForPlace(point);
        if (grid is null && Math.Abs(east.Degrees) <= 90 && OnWgs84(new(east.Degrees, north.Degrees), datum) is var exchanged && NationalGrid.ForPlace(exchanged) is { } otherWay)
        {
            (point, grid) = (exchanged, otherWay);
            doubts |= Doubts.CoordinatesSwapped;
        }

        if (stated is null)
            doubts |= Doubts.UncertaintyAssumed;
        var radius = stated ?? CoordinatePrecision.RadiusMetres(Math.Min(Math.Max(north.Decimals, east.Decimals), MostDecimals), point.Latitude);
        place = new(point, grid, radius + ShiftErrorOf(datum), doubts);
        return true;
    }

    private static LatLon OnWgs84(LatLon written, StatedDatum datum)
    {
        if (datum.Known is not { } known)
            return written;
        var shifted = DatumShift.ToWgs84(written, known);
        return Math.Abs(shifted.Latitude - written.Latitude) < MostShiftDegrees && Math.Abs(shifted.Longitude - written.Longitude) < MostShiftDegrees ? shifted : written;
    }

    private static double ShiftErrorOf(StatedDatum datum)
    {
        if (datum.Known is not { } known)
            return datum.IsStated ? UnknownDatumMetres : 0;
        var error = DatumShift.AccuracyMetres(known);
        return error < LeastShiftErrorMetres ? 0 : error;
    }

    /// <summary>Zero is no valid uncertainty (Darwin Core) and counts as not stated.</summary>
    private static bool TryReadUncertainty(ReadOnlySpan<char> text, out double? metres)
    {
        metres = null;
        if (text.IsEmpty)
            return true;
        if (text.EndsWith("m", StringComparison.OrdinalIgnoreCase))
            text = text[..^1].TrimEnd();
        if (!double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number) || number < 0)
            return false;
        metres = number > 0 ? number : null;
        return true;
    }
}
