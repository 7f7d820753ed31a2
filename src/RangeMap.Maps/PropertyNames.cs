using System.Globalization;

namespace RangeMap.Maps;

/// <summary>Names of the properties of a square, the same in tiles, GeoJSON and TileJSON, so that one style serves all.</summary>
public static class PropertyNames
{
    /// <summary>The grid reference, text.</summary>
    public const string Square = "square";

    /// <summary>The national grid's code, text: GB, IE, CI or CI-WGS84.</summary>
    public const string Grid = "grid";

    /// <summary>First year by whose end the taxon was certainly there, within the periods asked.</summary>
    public const string First = "first";

    /// <summary>Last year since whose start the taxon was certainly there, within the periods asked.</summary>
    public const string Last = "last";

    /// <summary>Records, summed over the periods; where periods overlap, a record counts in each that contains it.</summary>
    public const string Records = "records";

    /// <summary>Index of the first period with records, in the order asked, from 0.</summary>
    public const string Period = "period";

    /// <summary>Index of the last period with records.</summary>
    public const string Latest = "latest";

    /// <summary>What became of the square between two periods.</summary>
    public const string Change = "change";

    /// <summary>Year of the first arrival.</summary>
    public const string Year = "year";

    /// <summary>Records in the period of an index: p0, p1 ... Left out where there are none.</summary>
    public static string RecordsIn(int period) => string.Create(CultureInfo.InvariantCulture, $"p{period}");

    /// <summary>Visits in the period of an index: v0, v1 ... Left out where there are none.</summary>
    public static string VisitsIn(int period) => string.Create(CultureInfo.InvariantCulture, $"v{period}");
}
