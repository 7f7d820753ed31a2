namespace RangeMap.Maps;

/// <summary>Measures of a size of paper: millimetres, and points for texts.</summary>
internal sealed record SheetStyle
{
    /// <summary>Width of the paper.</summary>
    public required double Width { get; init; }

    /// <summary>Height of the paper; null for as high as its content.</summary>
    public required double? Height { get; init; }

    /// <summary>White round the content.</summary>
    public required double Margin { get; init; }

    /// <summary>The greatest height of the map.</summary>
    public required double MostMapHeight { get; init; }

    /// <summary>Between the blocks.</summary>
    public required double Gap { get; init; }

    /// <summary>Size of the scientific name.</summary>
    public required double TitlePoints { get; init; }

    /// <summary>Size of the lines below it and of the legend.</summary>
    public required double TextPoints { get; init; }

    /// <summary>Size of the source, the letters of the grid and the like: the least that can be read in print.</summary>
    public required double SmallPoints { get; init; }

    /// <summary>Dots to the inch of a picture.</summary>
    public required int Dpi { get; init; }

    /// <summary>Distance of base lines, as a share of the size.</summary>
    public const double LineHeight = 1.25;

    /// <summary>The style of a size.</summary>
    public static SheetStyle Of(PrintSize size) => size switch
    {
        PrintSize.Page => new()
        {
            Width = 210, Height = 297, Margin = 12, MostMapHeight = 240, Gap = 3.5, TitlePoints = 19, TextPoints = 9.5, SmallPoints = 7, Dpi = 200,
        },
        _ => new()
        {
            Width = 90, Height = null, Margin = 2, MostMapHeight = 115, Gap = 1.8, TitlePoints = 12, TextPoints = 7.5, SmallPoints = 6, Dpi = 300,
        },
    };

    /// <summary>Height of a line of a size of text, millimetres.</summary>
    public static double LineMm(double points) => points * TextStyle.MmPerPoint * LineHeight;
}
