using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>What stands for the place of a row in formats with geometry.</summary>
public enum ExportGeometry
{
    /// <summary>The outline of the row's square.</summary>
    Square = 0,

    /// <summary>The row's point.</summary>
    Point = 1,

    /// <summary>The row's lines; as GeoJSON only.</summary>
    Lines = 2,
}

/// <summary>A table that can be written in every format.</summary>
/// <param name="Name">Its name in files and layers.</param>
/// <param name="Title">Its title.</param>
/// <param name="Description">What a row is.</param>
/// <param name="Geometry">What stands for the place of a row.</param>
/// <param name="Columns">Its columns, in order.</param>
/// <param name="Key">Names of the columns that together tell a row from all others.</param>
public sealed record ExportTable(
    string Name, string Title, string Description, ExportGeometry Geometry, IReadOnlyList<ExportColumn> Columns, IReadOnlyList<string> Key);

/// <summary>One row. Whoever makes rows may hand out the same object again with other cells, so that a long export takes no more room than a short one.</summary>
public sealed class ExportRow(int columns)
{
    /// <summary>The cells, in the order of the table's columns.</summary>
    public ExportValue[] Values { get; } = new ExportValue[columns];

    /// <summary>The row's square.</summary>
    public Square Square { get; set; }

    /// <summary>The row's point, for tables of points.</summary>
    public LatLon Point { get; set; }

    /// <summary>The row's lines, for tables of lines.</summary>
    public IReadOnlyList<IReadOnlyList<LatLon>> Lines { get; set; } = [];
}
