using RangeMap.Presence;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>What a snapshot of the data is read from: the live database, or the file of a frozen edition.</summary>
internal interface IPublishedState
{
    /// <summary>The live state's number and time; of a frozen edition, those of the state that was frozen.</summary>
    Edition Edition { get; }

    /// <summary>The frozen edition's identifier; null for the live state.</summary>
    string? FrozenId { get; }

    /// <summary>The accepted taxa.</summary>
    IReadOnlyList<Taxon> ReadTaxa();

    /// <summary>The synonyms.</summary>
    IReadOnlyList<Synonym> ReadSynonyms();

    /// <summary>Names of taxa as they were sent, by number.</summary>
    IReadOnlyDictionary<int, string> ReadNames();

    /// <summary>The cube of the records made at a taxon itself.</summary>
    /// <exception cref="EditionPassedException">The data changed meanwhile.</exception>
    TaxonCube ReadCube(int taxon);

    /// <summary>The visits.</summary>
    /// <exception cref="EditionPassedException">The data changed meanwhile.</exception>
    VisitLog ReadVisits();

    /// <summary>What the records of taxa say of their season.</summary>
    /// <exception cref="EditionPassedException">The data changed meanwhile.</exception>
    IReadOnlyList<SeasonEntry> ReadSeason(IReadOnlyCollection<int> taxa);

    /// <summary>The regions that were loaded.</summary>
    /// <exception cref="EditionPassedException">The data changed meanwhile.</exception>
    IReadOnlyList<StoredRegion> ReadRegions();
}
