using Dapper;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>Keeps the names that a person accepted once for a taxon of the list, so that the next file with them is read without asking.</summary>
public sealed class AcceptedNameStore(Database database, TimeProvider clock)
{
    /// <summary>The names as a reader of files needs them.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public AcceptedNames Read() => new(ReadAll().Select(name => KeyValuePair.Create(name.Name, name.TaxonId)));

    /// <summary>The names with who accepted them, in the order of the alphabet.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyList<AcceptedName> ReadAll() => database.Use<IReadOnlyList<AcceptedName>>(connection => connection.Query<AcceptedName>(AcceptedNameSql.ReadAll).AsList());

    /// <summary>Accepts a name; one that was accepted before for another taxon stands for this one from now on.</summary>
    /// <exception cref="StoreException">The taxon is not in the list, or the database cannot be written to.</exception>
    public void Accept(string name, string taxonId, string by)
    {
        var at = UtcText.Of(clock.GetUtcNow());
        var kept = database.Use(connection => connection.Execute(AcceptedNameSql.Accept, new { Name = AcceptedNames.Plain(name), TaxonId = taxonId, By = by, At = at }));
        if (kept == 0)
            throw new StoreException($"The taxon list has no taxon \"{taxonId}\".", "Use a taxonID of the list.");
    }

    /// <summary>Forgets a name; records that were read under it stay. False when it was not accepted.</summary>
    /// <exception cref="StoreException">The database cannot be written to.</exception>
    public bool Forget(string name) => database.Use(connection => connection.Execute(AcceptedNameSql.Forget, new { Name = AcceptedNames.Plain(name) }) > 0);
}

/// <summary>A name that a person accepted.</summary>
public sealed record AcceptedName
{
    /// <summary>As files write it, with single spaces.</summary>
    public string Name { get; init; } = "";

    /// <summary>taxonID that it stands for.</summary>
    public string TaxonId { get; init; } = "";

    /// <summary>Name of that taxon.</summary>
    public string TaxonName { get; init; } = "";

    /// <summary>Who accepted it.</summary>
    public string AcceptedBy { get; init; } = "";

    /// <summary>When, ISO 8601 in UTC.</summary>
    public string AcceptedAt { get; init; } = "";
}
