namespace RangeMap.Server;

/// <summary>Notices that the licences of the base data ask to be shown; NOTICE has them in full.</summary>
internal static class Credits
{
    private const string
        Coast = "Coast © OpenStreetMap contributors, ODbL 1.0",
        Borders = "Inner borders made with Natural Earth, public domain",
        Places = "Place names © GeoNames, CC BY 4.0",
        BritishGrid = "British grid conversion uses OSTN15, © 2016 Ordnance Survey and the Ministry of Defence, BSD-2-Clause";

    /// <summary>Of all that the program holds.</summary>
    public static IReadOnlyList<string> All { get; } = [Coast, Borders, Places, BritishGrid];

    /// <summary>Of what a printed map shows: it names no places.</summary>
    public static IReadOnlyList<string> OfPrintedMaps { get; } = [Coast, Borders, BritishGrid];
}
