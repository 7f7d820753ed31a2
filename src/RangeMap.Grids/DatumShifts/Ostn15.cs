namespace RangeMap.Grids;

/// <summary>
/// The OSTN15 shift between ETRS89 on the National Grid projection (GRS80) and OSGB36 National Grid coordinates:
/// bilinear between nodes 1 km apart (EPSG method 9633; Ordnance Survey, "Transformations and OSGM15 user guide", 2016).
/// </summary>
/// <remarks>Outside [0, 700 km] by [0, 1250 km] the shift of the nearest point of the rim is taken, which leaves no tear there.</remarks>
internal static class Ostn15
{
    private const double Metres = 1e-3;

    /// <summary>True when ETRS89 coordinates on the projection lie where the grid is defined, both edges included.</summary>
    public static bool Defines(EastNorth etrs89) =>
        etrs89.Easting is >= 0 and <= (Ostn15Nodes.Columns - 1) * 1000.0 &&
        etrs89.Northing is >= 0 and <= (Ostn15Nodes.Rows - 1) * 1000.0;

    /// <summary>ETRS89 easting and northing to OSGB36.</summary>
    public static EastNorth ToOsgb36(EastNorth etrs89)
    {
        var shift = ShiftAt(etrs89);
        return new(etrs89.Easting + shift.Easting, etrs89.Northing + shift.Northing);
    }

    /// <summary>OSGB36 easting and northing to ETRS89.</summary>
    /// <remarks>
    /// The shift changes by at most 0.25 m in a kilometre, so each pass leaves at most a quarter of a thousandth of the
    /// error before it: 33 mm after the first, below 0.01 mm after the second, 2e-6 mm after the third.
    /// </remarks>
    public static EastNorth ToEtrs89(EastNorth osgb36)
    {
        var etrs89 = osgb36;
        for (var pass = 0; pass < 3; pass++)
        {
            var shift = ShiftAt(etrs89);
            etrs89 = new(osgb36.Easting - shift.Easting, osgb36.Northing - shift.Northing);
        }

        return etrs89;
    }

    private static EastNorth ShiftAt(EastNorth etrs89)
    {
        double x = Math.Clamp(etrs89.Easting * 1e-3, 0, Ostn15Nodes.Columns - 1), y = Math.Clamp(etrs89.Northing * 1e-3, 0, Ostn15Nodes.Rows - 1);
        int i = Math.Min((int)x, Ostn15Nodes.Columns - 2), j = Math.Min((int)y, Ostn15Nodes.Rows - 2);
        double t = x - i, u = y - j;
        var nodes = Ostn15Nodes.Packed;
        var k = i + j * Ostn15Nodes.Columns;
        uint sw = nodes[k], se = nodes[k + 1], nw = nodes[k + Ostn15Nodes.Columns], ne = nodes[k + Ostn15Nodes.Columns + 1];
        return new(
            (Ostn15Nodes.EastBase + Between((ushort)sw, (ushort)se, (ushort)nw, (ushort)ne, t, u)) * Metres,
            (Ostn15Nodes.NorthBase + Between((int)(sw >> 16), (int)(se >> 16), (int)(nw >> 16), (int)(ne >> 16), t, u)) * Metres);
    }

    private static double Between(int sw, int se, int nw, int ne, double t, double u)
    {
        double south = sw + t * (se - sw), north = nw + t * (ne - nw);
        return south + u * (north - south);
    }
}
