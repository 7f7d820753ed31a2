namespace RangeMap.Maps;

/// <summary>The sizes that maps are printed in.</summary>
public enum PrintSize
{
    /// <summary>A4, upright.</summary>
    Page,

    /// <summary>A column of 90 mm, as high as the map needs.</summary>
    Column,
}

/// <summary>What a map is printed with.</summary>
public enum PrintInk
{
    /// <summary>Colours that are told apart with any colour vision and in grey.</summary>
    Colour,

    /// <summary>Black only: classes differ by pattern, so that copies of copies can be read.</summary>
    Black,
}

/// <summary>The formats of printed maps.</summary>
public enum PrintFormat
{
    /// <summary>SVG 1.1.</summary>
    Svg,

    /// <summary>PNG, 200 dots to the inch on a page, 300 in a column.</summary>
    Png,

    /// <summary>PDF 1.4.</summary>
    Pdf,
}
