namespace RangeMap.Presence;

/// <summary>
/// Packs a cube into few bytes (about six a cell) so that a taxon's whole history is one read. Per cell, in order:
/// difference of the square code; difference of the first day within the square, else the first day; length of the
/// range; the three counts. All are variable-length integers with the sign in the lowest bit, seven bits a byte.
/// </summary>
public static class CubeCodec
{
    /// <summary>The packed form; the empty cube packs to no bytes.</summary>
    public static byte[] Pack(TaxonCube cube) => Pack(cube.Cells);

    /// <summary>Gathers cells in any order into a cube's packed form; sorts and sums in the memory given, which may be used again.</summary>
    /// <param name="cells">The cells.</param>
    /// <param name="count">Number of cells of the cube.</param>
    public static byte[] PackSum(Span<CubeCell> cells, out int count)
    {
        count = TaxonCube.SumInPlace(cells);
        return Pack(cells[..count]);
    }

    private static byte[] Pack(ReadOnlySpan<CubeCell> cells)
    {
        var bytes = new VarintWriter(cells.Length * 8);
        long square = 0;
        var day = 0;
        foreach (ref readonly var cell in cells)
        {
            if (cell.SquareCode != square)
                day = 0;
            bytes.Write(cell.SquareCode - square);
            bytes.Write(cell.FirstDay - day);
            bytes.Write(cell.LastDay - cell.FirstDay);
            bytes.Write(cell.Counts.All);
            bytes.Write(cell.Counts.Usable);
            bytes.Write(cell.Counts.Confirmed);
            (square, day) = (cell.SquareCode, cell.FirstDay);
        }

        return bytes.ToArray();
    }

    /// <summary>The cube of a packed form.</summary>
    /// <exception cref="InvalidDataException">The bytes are no packed cube.</exception>
    public static TaxonCube Unpack(ReadOnlySpan<byte> bytes)
    {
        var reader = new VarintReader(bytes);
        var cells = new List<CubeCell>(bytes.Length / 6);
        long square = 0;
        var day = 0;
        while (!reader.AtEnd)
        {
            var step = reader.Read();
            square += step;
            if (step != 0)
                day = 0;
            day += (int)reader.Read();
            var last = day + (int)reader.Read();
            cells.Add(new(square, day, last, new((int)reader.Read(), (int)reader.Read(), (int)reader.Read())));
        }

        return TaxonCube.Gather(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(cells));
    }
}
