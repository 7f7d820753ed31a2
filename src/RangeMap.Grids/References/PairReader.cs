using System.Globalization;

namespace RangeMap.Grids;

/// <summary>Reads eastings and northings in metres, on the grid that the text, the data set or the country states; without one they are refused.</summary>
internal static class PairReader
{
    private const int FewestFigures = 4, FirstNorthernUtm = 32600, FirstSouthernUtm = 32700;

    /// <summary>Reads what follows the word EPSG: a code, then the pair.</summary>
    public static string? ReadWithCode(ReadOnlySpan<char> text, out Square square, out GridReferenceNotes notes)
    {
        (square, notes) = (default, GridReferenceNotes.None);
        text = text.TrimStart(" :");
        var end = text.IndexOfAnyExceptInRange('0', '9');
        if (end is < 1 or > 6)
            return NumericFaults.NoPair;
        var pair = default(NumericPair);
        if (pair.Read(text[end..]) is { } fault)
            return fault;
        var code = int.Parse(text[..end], NumberStyles.None, CultureInfo.InvariantCulture);
        return code is > FirstNorthernUtm and <= FirstNorthernUtm + UtmZone.Count ? ReadUtm(pair, GridId.UtmNorth, code - FirstNorthernUtm, out square, out notes)
            : code is > FirstSouthernUtm and <= FirstSouthernUtm + UtmZone.Count ? ReadUtm(pair, GridId.UtmSouth, code - FirstSouthernUtm, out square, out notes)
            : NationalGrid.All.FirstOrDefault(grid => grid.Epsg == code) is { } grid ? ReadOn(grid, pair, out square, out notes)
            : NumericFaults.UnknownCode(text[..end]);
    }

    /// <summary>Reads a pair whose grid only the options can tell.</summary>
    public static string? Read(ReadOnlySpan<char> text, GridReferenceOptions options, out Square square, out GridReferenceNotes notes)
    {
        (square, notes) = (default, GridReferenceNotes.None);
        var pair = default(NumericPair);
        if (pair.Read(text) is { } fault)
            return options is { System: null, Country: null or "" } && !ReferenceEquals(fault, NumericFaults.Negative) ? NumericFaults.NoSystem : fault;
        if (options.System is { } stated)
            return ReadOn(NationalGrid.Get(stated), pair, out square, out notes);
        var known = !string.IsNullOrEmpty(options.Country);
        var grids = known ? CountryGrids.Of(options.Country!, options.ChannelIslandsWgs84) : CountryGrids.Any;
        if (grids is null)
            return NumericFaults.UnknownCountry(options.Country!);
        var point = new EastNorth(pair.Easting, pair.Northing);
        var possible = grids.Where(grid => CountryGrids.IsRecordedOn(grid, point)).ToList();
        return known && possible.Count == 1 ? ReadOn(possible[0], pair, out square, out notes)
            : possible.Count > 0 ? NumericFaults.Ambiguous(possible)
            : known ? NumericFaults.OutsideCountry(options.Country!) : NumericFaults.NoSystem;
    }

    /// <summary>The 1 m square of a pair in a zone of UTM; or the reason why there is none.</summary>
    public static string? ReadUtm(in NumericPair pair, GridId id, int zone, out Square square, out GridReferenceNotes notes)
    {
        (square, notes) = (default, GridReferenceNotes.MetresTakenAsWritten);
        var point = new EastNorth(zone * (double)UtmGrid.ZoneWidth + pair.Easting, pair.Northing);
        if (pair.Easting >= UtmGrid.ZoneWidth || !NationalGrid.Get(id).Contains(point))
            return GridReferenceFaults.OutsideGrid(NationalGrid.Get(id), pair.Easting, pair.Northing);
        square = Square.At(id, SquareSize.M1, point);
        return null;
    }

    private static string? ReadOn(INationalGrid grid, in NumericPair pair, out Square square, out GridReferenceNotes notes)
    {
        (square, notes) = (default, GridReferenceNotes.MetresTakenAsWritten);
        if (grid is UtmGrid)
            return NumericFaults.ZoneMissing;
        if (grid is EuropeanGrid && !pair.HasLetters)
            return NumericFaults.AxisOrder;
        var (size, side) = (SquareSize.M1, 1);
        if (grid is NumberedGrid && pair is { HasDecimals: false, HasLetters: false, EastingFigures: < NumberedGrid.Figures } && pair.EastingFigures == pair.NorthingFigures)
        {
            side = (int)Math.Pow(10, NumberedGrid.Figures - pair.EastingFigures);
            (size, notes) = ((SquareSize)side, GridReferenceNotes.None);
        }
        else if (!pair.HasDecimals && Math.Min(pair.EastingFigures, pair.NorthingFigures) < FewestFigures)
        {
            return NumericFaults.TooFewFigures(grid);
        }

        var point = new EastNorth(pair.Easting * side, pair.Northing * side);
        if (!grid.Contains(point))
            return GridReferenceFaults.OutsideGrid(grid, point.Easting, point.Northing);
        square = Square.At(grid.Id, size, point);
        return null;
    }
}
