namespace RangeMap.Grids;

/// <summary>The seven-parameter shifts to WGS84 in use, as in the EPSG dataset: metres, seconds of arc, parts per million; position-vector convention.</summary>
internal static class PublishedShifts
{
    /// <summary>EPSG:1954, TM75 to WGS84, 1 m.</summary>
    public static readonly HelmertShift Tm75 = new(482.5, -130.6, 564.6, -1.042, -0.214, -0.631, 8.15);

    /// <summary>EPSG:1133, the mean shift of ED50 for western Europe, 10 m; the other published shifts for the Channel Islands lie within 2 m of it.</summary>
    public static readonly HelmertShift Ed50 = new(-87, -98, -121);

    /// <summary>EPSG:9281, Amersfoort to ETRS89, 0.25 m; printed in microradians and in the coordinate-frame convention, hence the signs here.</summary>
    public static readonly HelmertShift Amersfoort = new(
        565.7381, 50.4018, 465.2904,
        -1.91514 * Angle.SecondsPerMicroradian, 1.60363 * Angle.SecondsPerMicroradian, -9.09546 * Angle.SecondsPerMicroradian,
        4.07244);
}
