namespace RangeMap.Change;

/// <summary>Occupied squares of one period and their shares in coarser cells, summed by block, so that any draw of blocks has an area of occupancy.</summary>
internal sealed class OccupancyByBlock
{
    private readonly SurveyFrame _frame;
    private readonly double[] _squares;
    private readonly double[] _cells;

    private OccupancyByBlock(SurveyFrame frame, int blocks) => (_frame, _squares, _cells) = (frame, new double[blocks], new double[blocks]);

    /// <summary>Sums a period.</summary>
    public static OccupancyByBlock Of(SurveyFrame frame, TaxonRange range, int[] records, HeldBlocks blocks)
    {
        var sums = new OccupancyByBlock(frame, blocks.Count);
        var shares = frame.Cells.Shares(range.Squares, records);
        for (var i = 0; i < records.Length; i++)
        {
            if (records[i] == 0)
                continue;
            var block = blocks.Of(range.Squares[i]);
            sums._squares[block]++;
            sums._cells[block] += shares[i];
        }

        return sums;
    }

    /// <summary>Area, km², at 2 km of a draw, with the slope C that scaled it; C is 0 where nothing had to be scaled.</summary>
    /// <param name="times">How many times the draw holds each block.</param>
    /// <param name="more">What is added to the numbers of squares and of cells.</param>
    public (double Km2, double C) Km2(ReadOnlySpan<byte> times, double more)
    {
        var (squares, cells) = (more, more);
        for (var block = 0; block < times.Length; block++)
        {
            squares += times[block] * _squares[block];
            cells += times[block] * _cells[block];
        }

        if (!_frame.Cells.Coarser)
            return (cells * OccupancyCells.ReferenceKm * OccupancyCells.ReferenceKm, 0);
        if (squares == 0)
            return (0, 0);
        var slope = AreaOfOccupancy.Slope(_frame.SideKm, squares, 2 * _frame.SideKm, cells);
        return (AreaOfOccupancy.At2Km(_frame.SideKm, squares, slope), slope);
    }
}
