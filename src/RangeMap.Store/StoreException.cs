namespace RangeMap.Store;

/// <summary>The store cannot do what was asked, for a reason that its user can act on.</summary>
public sealed class StoreException(string message, string mend, Exception? inner = null) : Exception(message, inner)
{
    /// <summary>What the user can do about it.</summary>
    public string Mend { get; } = mend;

    /// <summary>True when what was asked cannot be done as the data stand; false when the database itself failed.</summary>
    public bool IsOfRequest => InnerException is null;
}
