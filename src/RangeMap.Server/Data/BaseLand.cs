using nietras.SeparatedValues;
using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Server;

/// <summary>The land of gis-data, as the simulated world is told of it.</summary>
internal static class BaseLand
{
    private const double MetresPerKm = 1000;

    /// <summary>Britain, Ireland and Man by 10 km squares.</summary>
    public static SimulatedLand Read()
    {
        using var coast = BaseData.Open("land.geojson");
        var land = LandArea.Read(coast);
        return new(Cells(), (cell, easting, northing) => land.Contains(NationalGrid.Get(cell.Grid).ToLatLon(new(easting, northing))));
    }

    private static List<LandCell> Cells()
    {
        using var stream = BaseData.Open("land-squares.csv");
        using var rows = Sep.Reader().From(stream);
        var cells = new List<LandCell>();
        foreach (var row in rows)
        {
            // The scenario leaves the Channel Islands out: no invented recorder crosses to them.
            // Nor to islets, which the coast does not have.
            if (NationalGrid.Find(row["grid"].ToString()) is not { Id: GridId.British or GridId.Irish } grid || !row["source"].Span.SequenceEqual("coast"))
                continue;
            var square = new Square(grid.Id, SquareSize.Km10, row["easting"].Parse<int>(), row["northing"].Parse<int>());
            var centre = Arrival.CommonCentre(square);
            cells.Add(new(grid.Id, square.Easting, square.Northing, centre.Easting / MetresPerKm, centre.Northing / MetresPerKm));
        }

        return cells;
    }
}
