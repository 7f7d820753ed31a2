using System.Globalization;
using RangeMap.Change;
using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>The truth of the invented world: for each species whose range moves, when it reached and left each 10 km square.</summary>
internal static class InventedTruth
{
    public static void Write(TextWriter writer, SimulatedWorld world)
    {
        writer.WriteLine("taxonID,role,square,reached,lost");
        foreach (var (index, species) in world.Species.Index().Where(pair => pair.Item.Role != InventedRole.Resident))
        {
            for (var cell = 0; cell < world.Land.Cells.Count; cell++)
            {
                if (world.Truth.Arrival(index, cell) is not { } reached)
                    continue;
                var land = world.Land.Cells[cell];
                var square = new Square(land.Grid, SquareSize.Km10, land.Easting, land.Northing);
                writer.WriteLine($"{InventedTaxonList.IdOf(species.Name)},{species.Role},{square},{Year(reached)},{Year(world.Truth.Loss(index, cell))}");
            }
        }
    }

    private static string Year(double? year) =>
        year is { } known && double.IsFinite(known) ? known.ToString("0.00", CultureInfo.InvariantCulture) : "";
}
