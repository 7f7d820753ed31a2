using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>The place that latitude and longitude give, with their uncertainty and datum.</summary>
/// <param name="Point">On WGS84.</param>
/// <param name="Grid">The national grid of the place; null outside all of them.</param>
/// <param name="UncertaintyMetres">Radius of the circle that holds the place.</param>
/// <param name="Doubts">What is doubtful about it.</param>
internal readonly record struct CoordinatePlace(LatLon Point, INationalGrid? Grid, double UncertaintyMetres, Doubts Doubts)
{
    /// <summary>No datum of the region is further than this from WGS84, in metres (ED50 is the furthest, about 240 m).</summary>
    private const double OtherDatumMetres = 250;

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

    private static bool TryPlace(DegreesText north, DegreesText east, double? stated, Datum datum, out CoordinatePlace place, out RowFault? fault)
    {
        fault = null;
        var doubts = datum == Datum.Wgs84 ? Doubts.None : Doubts.DatumAssumed;
        var point = new LatLon(north.Degrees, east.Degrees);
        var grid = NationalGrid.ForPlace(point);
        if (grid is null && Math.Abs(east.Degrees) <= 90 && NationalGrid.ForPlace(new(east.Degrees, north.Degrees)) is { } otherWay)
        {
            (point, grid) = (new(east.Degrees, north.Degrees), otherWay);
            doubts |= Doubts.CoordinatesSwapped;
        }

        if (stated is null)
            doubts |= Doubts.UncertaintyAssumed;
        var radius = stated ?? CoordinatePrecision.RadiusMetres(Math.Min(Math.Max(north.Decimals, east.Decimals), MostDecimals), point.Latitude);
        if (datum == Datum.Other)
            radius += OtherDatumMetres;
        place = new(point, grid, radius, doubts);
        return true;
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
