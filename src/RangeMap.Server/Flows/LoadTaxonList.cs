using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Loads a taxon list, or updates the one that is there.</summary>
public static class LoadTaxonList
{
    /// <summary>Loads a file.</summary>
    /// <exception cref="UserException">The file as a whole cannot be read; nothing was changed.</exception>
    public static TaxonListAnswer Run(DataFolder folder, string path, TimeProvider clock)
    {
        var store = new TaxonStore(folder.Database, clock);
        try
        {
            using var file = File.OpenRead(path);
            var known = store.Read();
            var reading = TaxonListReader.Read(file, known);
            store.Keep(reading.List.Taxa, reading.List.Synonyms);
            return new(reading.List.Taxa.Count, reading.List.Synonyms.Count, reading.Refusals, reading.UnknownColumns, MergeAsListed(folder, reading.List, known, clock));
        }
        catch (ImportProblemException stopped)
        {
            throw new UserException(stopped.Problem.What, $"{path}, {stopped.Problem.Where}", stopped.Problem.Mend);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new UserException($"The file cannot be read: {error.Message}", path, "Check its name and that you may read it.");
        }
    }

    /// <summary>Taxa that stood in the list before and are synonyms in the new one are merged, which can be taken back.</summary>
    private static List<TaxonChangeAnswer> MergeAsListed(DataFolder folder, TaxonList list, TaxonList known, TimeProvider clock)
    {
        var changes = new TaxonChangeStore(folder.Database, clock);
        var stood = known.Taxa.Select(taxon => taxon.Id).ToHashSet(StringComparer.Ordinal);
        return [.. list.Synonyms.Where(synonym => stood.Contains(synonym.Id)).Select(synonym => changes.Merge(synonym.Id, synonym.AcceptedId, "taxon list", "The list calls it a synonym."))];
    }
}

/// <summary>What loading a taxon list did.</summary>
/// <param name="Taxa">Accepted taxa added or updated.</param>
/// <param name="Synonyms">Other names added or updated.</param>
/// <param name="Refusals">Rows refused.</param>
/// <param name="UnknownColumns">Columns of unknown meaning; what they hold is kept with the taxa.</param>
/// <param name="Merges">Taxa that the list calls synonyms by now.</param>
public sealed record TaxonListAnswer(int Taxa, int Synonyms, IReadOnlyList<Refusal> Refusals, IReadOnlyList<string> UnknownColumns, IReadOnlyList<TaxonChangeAnswer> Merges);
