namespace RangeMap.Server;

/// <summary>Something a user asked for cannot be done, for a reason the user can mend. Becomes a problem document over HTTP and an error on the command line.</summary>
public sealed class UserException : Exception
{
    /// <summary>Makes a problem.</summary>
    /// <param name="what">What is wrong, a sentence.</param>
    /// <param name="where">The parameter, file or line at fault.</param>
    /// <param name="mend">What to do about it, a sentence.</param>
    /// <param name="status">The HTTP status that fits.</param>
    public UserException(string what, string where, string mend, int status = StatusCodes.Status400BadRequest)
        : base(what) => (Where, Mend, Status) = (where, mend, status);

    /// <summary>The parameter, file or line at fault.</summary>
    public string Where { get; }

    /// <summary>What to do about it.</summary>
    public string Mend { get; }

    /// <summary>The HTTP status that fits.</summary>
    public int Status { get; }

    /// <summary>True when what was asked is at fault, rather than the data or a file: the command line then tells of bad arguments.</summary>
    public bool IsArgument { get; init; }

    /// <summary>A taxon that is not in the list.</summary>
    public static UserException UnknownTaxon(string name) =>
        new($"No taxon of this data folder is called '{name}'.", "taxon", "Use an identifier or a whole scientific name of the taxon list.", StatusCodes.Status404NotFound);
}
