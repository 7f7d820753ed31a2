using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;

namespace RangeMap.Server;

/// <summary>Chooses squares by region and box, and writes their cells; names are made once a square.</summary>
internal sealed class PlaceCells(ExportQuestion question)
{
    private const int MostKept = 100_000;

    private readonly string _size = question.Size.ToText();
    private readonly Dictionary<long, string> _names = [];

    /// <summary>True for a square of the region and box asked.</summary>
    public bool Wanted(Square square) =>
        (question.Box is not { } box || box.Intersects(DegreeBox.Of(square))) && (question.Region is null || question.Region.Holds(square));

    /// <summary>Adds reference, grid and size.</summary>
    public void Add(ref CellWriter cells, Square square)
    {
        cells.Row.Square = square;
        cells.Add(ExportValue.Of(Name(square)));
        cells.Add(ExportValue.Of(NationalGrid.Get(square.Grid).Code));
        cells.Add(ExportValue.Of(_size));
    }

    /// <summary>The days of a calendar year.</summary>
    public static Period YearOf(int year)
    {
        var first = new DateOnly(year, 1, 1).DayNumber;
        return new(first, first + (DateTime.IsLeapYear(year) ? 366 : 365), "");
    }

    private string Name(Square square)
    {
        if (_names.TryGetValue(square.Code, out var name))
            return name;
        if (_names.Count >= MostKept)
            _names.Clear();
        return _names[square.Code] = square.ToString();
    }
}
