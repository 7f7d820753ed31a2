namespace RangeMap.Grids;

/// <summary>
/// One square of a national grid, named by its south-west corner. It covers [Easting, Easting + side) by
/// [Northing, Northing + side) metres: a point on the eastern or northern edge belongs to the next square.
/// </summary>
/// <remarks>
/// Held as one 64-bit code, so that a square costs eight bytes, compares as a number and is stored as an integer:
/// grid (8 bits), size (4 bits), easting (26 bits, metres), northing (26 bits, metres), from the highest bit down.
/// The sign bit stays clear.
/// </remarks>
public readonly record struct Square : IComparable<Square>
{
    private const int CoordinateBits = 26;
    private const long CoordinateMask = (1L << CoordinateBits) - 1;

    private Square(long code) => Code = code;

    /// <summary>Makes the square of a size whose south-west corner is given.</summary>
    /// <param name="grid">The national grid.</param>
    /// <param name="size">The side.</param>
    /// <param name="easting">Metres, a multiple of the side, in [0, 67,108,864).</param>
    /// <param name="northing">Metres, a multiple of the side, in [0, 67,108,864).</param>
    /// <exception cref="ArgumentOutOfRangeException">The corner is not a multiple of the side, or out of range.</exception>
    public Square(GridId grid, SquareSize size, int easting, int northing)
    {
        var side = (int)size;
        if (easting < 0 || easting > CoordinateMask || easting % side != 0)
            throw new ArgumentOutOfRangeException(nameof(easting), easting, $"The easting of a corner must be a multiple of {side} in [0, {CoordinateMask + 1}).");
        if (northing < 0 || northing > CoordinateMask || northing % side != 0)
            throw new ArgumentOutOfRangeException(nameof(northing), northing, $"The northing of a corner must be a multiple of {side} in [0, {CoordinateMask + 1}).");
        Code = ((long)grid << 56) | ((long)SizeIndex(size) << 52) | ((long)easting << CoordinateBits) | (uint)northing;
    }

    /// <summary>The square as one positive number; see the remarks of <see cref="Square"/> for its parts.</summary>
    public long Code { get; }

    /// <summary>The national grid.</summary>
    public GridId Grid => (GridId)(byte)(Code >> 56);

    /// <summary>The side.</summary>
    public SquareSize Size => SizeAt((int)(Code >> 52) & 0xF);

    /// <summary>The side in metres.</summary>
    public int SideMetres => (int)Size;

    /// <summary>Easting of the south-west corner, metres.</summary>
    public int Easting => (int)((Code >> CoordinateBits) & CoordinateMask);

    /// <summary>Northing of the south-west corner, metres.</summary>
    public int Northing => (int)(Code & CoordinateMask);

    /// <summary>The middle of the square on the grid's plane.</summary>
    public EastNorth Centre => new(Easting + SideMetres / 2.0, Northing + SideMetres / 2.0);

    /// <summary>The square read back from its stored code.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is no square's code.</exception>
    public static Square FromCode(long code)
    {
        var square = new Square(code);
        if (code <= 0 || ((int)(code >> 52) & 0xF) > 7 || square.Grid == 0 || square.Easting % square.SideMetres != 0 || square.Northing % square.SideMetres != 0)
            throw new ArgumentOutOfRangeException(nameof(code), code, "This number is not the code of a square.");
        return square;
    }

    /// <summary>The square of a size that holds a point.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The point has a negative coordinate or one beyond the range of <see cref="Square"/>.</exception>
    public static Square At(GridId grid, SquareSize size, EastNorth point)
    {
        var side = (int)size;
        return new(grid, size, checked((int)Math.Floor(point.Easting / side) * side), checked((int)Math.Floor(point.Northing / side) * side));
    }

    /// <summary>True when the point (on the same grid's plane) lies in the square.</summary>
    public bool Contains(EastNorth point) =>
        point.Easting >= Easting && point.Easting < Easting + SideMetres &&
        point.Northing >= Northing && point.Northing < Northing + SideMetres;

    /// <summary>
    /// The square of another size that wholly contains this one. There is none when the other size is smaller, and
    /// none for the tetrads that straddle two quadrants (2 km squares do not nest in 5 km squares).
    /// </summary>
    public bool TryCoarsen(SquareSize size, out Square container)
    {
        int side = (int)size, own = SideMetres;
        int east = Easting / side * side, north = Northing / side * side;
        if (side < own || Easting + own > east + side || Northing + own > north + side)
        {
            container = default;
            return false;
        }

        container = new((Code & ~((0xFL << 52) | (CoordinateMask << CoordinateBits) | CoordinateMask))
            | ((long)SizeIndex(size) << 52) | ((long)east << CoordinateBits) | (uint)north);
        return true;
    }

    /// <inheritdoc/>
    public int CompareTo(Square other) => Code.CompareTo(other.Code);

    /// <summary>The grid reference, such as TQ38, TQ38SE, TQ38A or TQ3080.</summary>
    public override string ToString() => Code == 0 ? "(no square)" : GridReference.Format(this);

    private static int SizeIndex(SquareSize size) => size switch
    {
        SquareSize.M1 => 0,
        SquareSize.M10 => 1,
        SquareSize.M100 => 2,
        SquareSize.Km1 => 3,
        SquareSize.Km2 => 4,
        SquareSize.Km5 => 5,
        SquareSize.Km10 => 6,
        SquareSize.Km100 => 7,
        _ => throw new ArgumentOutOfRangeException(nameof(size), size, "This is no square size in use."),
    };

    private static SquareSize SizeAt(int index) => index switch
    {
        0 => SquareSize.M1,
        1 => SquareSize.M10,
        2 => SquareSize.M100,
        3 => SquareSize.Km1,
        4 => SquareSize.Km2,
        5 => SquareSize.Km5,
        6 => SquareSize.Km10,
        _ => SquareSize.Km100,
    };
}
