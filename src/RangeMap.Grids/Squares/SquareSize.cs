namespace RangeMap.Grids;

/// <summary>The square sizes in use; the value is the side in metres.</summary>
public enum SquareSize
{
    /// <summary>1 m, ten figures.</summary>
    M1 = 1,

    /// <summary>10 m, eight figures.</summary>
    M10 = 10,

    /// <summary>100 m, six figures.</summary>
    M100 = 100,

    /// <summary>1 km, a monad.</summary>
    Km1 = 1_000,

    /// <summary>2 km, a tetrad.</summary>
    Km2 = 2_000,

    /// <summary>5 km, a quadrant.</summary>
    Km5 = 5_000,

    /// <summary>10 km, a hectad.</summary>
    Km10 = 10_000,

    /// <summary>100 km, the lettered square.</summary>
    Km100 = 100_000,
}
