using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>How the plane of a tile matrix set lies under one tile: units of the tile run right and down from its top left corner.</summary>
/// <param name="Left">Easting of the tile's left edge, metres.</param>
/// <param name="Top">Northing of its top edge, metres.</param>
/// <param name="UnitsPerMetre">Tile units in one metre of the plane.</param>
internal readonly record struct TileFrame(double Left, double Top, double UnitsPerMetre)
{
    /// <summary>Units along the side of a tile.</summary>
    public const int Extent = 4096;

    /// <summary>Units drawn beyond each side, so that the outlines of clipped squares stay out of sight.</summary>
    public const int Buffer = 64;

    /// <summary>The part of the plane that is drawn: the tile and its buffer.</summary>
    public PlaneBounds Drawn
    {
        get
        {
            double metres = Extent / UnitsPerMetre, buffer = Buffer / UnitsPerMetre;
            return new(Left - buffer, Top - metres - buffer, Left + metres + buffer, Top + buffer);
        }
    }

    public TilePoint ToTile(EastNorth point) =>
        new((point.Easting - Left) * UnitsPerMetre, (Top - point.Northing) * UnitsPerMetre);
}

/// <summary>A place in a tile before it is rounded to whole units; X runs right, Y down.</summary>
internal readonly record struct TilePoint(double X, double Y);
