namespace RangeMap.Server;

/// <summary>Notices that the licences of the base data ask to be shown; NOTICE has them in full.</summary>
internal static class Credits
{
    public static IReadOnlyList<string> All { get; } =
    [
        "Coast © OpenStreetMap contributors, ODbL 1.0",
        "Inner borders made with Natural Earth, public domain",
        "Place names © GeoNames, CC BY 4.0",
        "British grid conversion uses OSTN15, © 2016 Ordnance Survey and the Ministry of Defence, BSD-2-Clause",
    ];
}
