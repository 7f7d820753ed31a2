using System.Globalization;

namespace RangeMap.Grids;

/// <summary>Reads references that begin with a zone: military grid (30UXC9912) and UTM (30U 565145 5448517, 30N 565145 5448517).</summary>
internal static class ZoneReader
{
    private const int LongestZone = 2;

    /// <summary>True when a text (capitals) begins with one or two figures and a letter.</summary>
    public static bool IsLike(ReadOnlySpan<char> text)
    {
        var figures = Math.Max(text.IndexOfAnyExceptInRange('0', '9'), 0);
        var rest = text[figures..].TrimStart();
        return figures is > 0 and <= LongestZone && !rest.IsEmpty && char.IsAsciiLetterUpper(rest[0]);
    }

    /// <summary>Reads a text (capitals); null, or the reason why it names no square.</summary>
    public static string? Read(ReadOnlySpan<char> text, out Square square, out GridReferenceNotes notes)
    {
        (square, notes) = (default, GridReferenceNotes.None);
        if (!IsLike(text))
            return NumericFaults.ZoneMissing;
        var figures = text.IndexOfAnyExceptInRange('0', '9');
        var zone = int.Parse(text[..figures], NumberStyles.None, CultureInfo.InvariantCulture);
        if (zone is < 1 or > UtmZone.Count)
            return NumericFaults.NoZone(text[..figures]);
        var rest = text[figures..].TrimStart();
        var letter = rest[0];
        rest = rest[1..].TrimStart();
        if (!MgrsLetters.IsBand(letter))
            return NumericFaults.NoBand(letter);
        if (!MgrsLetters.HasBand(zone, letter))
            return NumericFaults.NoSuchBandHere(zone);
        if (rest.IsEmpty)
            return NumericFaults.ZoneOnly;
        return rest.IndexOfAnyInRange('A', 'Z') is var first && first >= 0 && !rest[..first].ContainsAnyInRange('0', '9') && !IsAxisLetters(rest)
            ? ReadMgrs(rest, zone, letter, out square, out notes)
            : ReadPair(rest, zone, letter, out square, out notes);
    }

    /// <summary>True for E 565145 N 5448517: one letter, then figures.</summary>
    private static bool IsAxisLetters(ReadOnlySpan<char> rest) => rest[0] is 'E' or 'N' && rest[1..].TrimStart() is [>= '0' and <= '9', ..];

    private static string? ReadMgrs(ReadOnlySpan<char> rest, int zone, char band, out Square square, out GridReferenceNotes notes)
    {
        (square, notes) = (default, GridReferenceNotes.None);
        var parts = default(ReferenceText);
        if (parts.Read(rest) is { } fault)
            return fault;
        if (parts.Letters != 2)
            return NumericFaults.MgrsLetters(parts.Letters);
        if (!MgrsLetters.TryFindCorner(zone, band, parts.First, parts.Second, out var easting, out var northing))
            return NumericFaults.NoMgrsSquare(zone, band, parts.First, parts.Second);
        var grid = MgrsLetters.IsNorthern(band) ? GridId.UtmNorth : GridId.UtmSouth;
        return GridReferenceReader.ReadFrom(parts, new(grid, SquareSize.Km100, zone * UtmGrid.ZoneWidth + easting, northing), out square, ref notes);
    }

    private static string? ReadPair(ReadOnlySpan<char> rest, int zone, char letter, out Square square, out GridReferenceNotes notes)
    {
        (square, notes) = (default, GridReferenceNotes.None);
        var pair = default(NumericPair);
        if (pair.Read(rest) is { } fault)
            return fault;
        var inBand = MgrsLetters.IsInBand(letter, pair.Northing);
        if (letter == 'S' && inBand)
            return NumericFaults.HemisphereOrBand(zone);
        if (letter is not ('S' or 'N') && !inBand)
            return NumericFaults.OutsideBand(pair.Northing, letter);
        var grid = letter != 'S' && MgrsLetters.IsNorthern(letter) ? GridId.UtmNorth : GridId.UtmSouth;
        return PairReader.ReadUtm(pair, grid, zone, out square, out notes);
    }
}
