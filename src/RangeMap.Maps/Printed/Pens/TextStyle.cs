namespace RangeMap.Maps;

/// <summary>A face of the fonts that maps are printed with.</summary>
internal enum Face
{
    Regular,
    Italic,
    Bold,
}

/// <summary>Which end of a text its place is.</summary>
internal enum TextAnchor
{
    Start,
    Middle,
    End,
}

/// <summary>How a text is written.</summary>
/// <param name="Face">The face.</param>
/// <param name="Points">Size in points of 1/72 inch.</param>
/// <param name="Colour">As #rrggbb.</param>
/// <param name="Anchor">Which end stands at the place.</param>
/// <param name="Halo">Colour of an edge round the letters, which keeps them legible over a map; null for none.</param>
internal sealed record TextStyle(Face Face, double Points, string Colour, TextAnchor Anchor = TextAnchor.Start, string? Halo = null)
{
    /// <summary>Millimetres to a point.</summary>
    public const double MmPerPoint = 25.4 / 72;

    /// <summary>Width of the halo, as a share of the size.</summary>
    public const double HaloShare = 0.28;

    /// <summary>Size in millimetres.</summary>
    public double SizeMm => Points * MmPerPoint;
}
