using RangeMap.Maps;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Makes an archive of vector tiles of one taxon or of many.</summary>
internal static class MakeTiles
{
    /// <summary>Writes the archive to a new file.</summary>
    /// <param name="folder">The data.</param>
    /// <param name="question">The taxa, and which records count.</param>
    /// <param name="periods">The periods that squares tell apart.</param>
    /// <param name="path">The file.</param>
    /// <param name="progress">Told the number of taxa drawn, and how many there are.</param>
    /// <param name="cancel">Stops the writing.</param>
    /// <returns>How many tiles it has.</returns>
    /// <exception cref="UserException">There is nothing to draw.</exception>
    public static async Task<long> WriteAsync(
        DataFolder folder, ExportQuestion question, IReadOnlyList<Period> periods, string path, Action<long, long>? progress, CancellationToken cancel)
    {
        await using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1 << 16);
        var tiles = await PresenceArchive.WriteAsync(file, path, Layers(question, periods, progress), MakeExport.SourceOf(folder, question), string.Join("; ", Credits.All), cancel);
        return tiles > 0 ? tiles : throw new UserException("There is no square to draw.", "taxon", "Ask for other taxa, a coarser grid or another quality.", StatusCodes.Status404NotFound);
    }

    /// <summary>Map after map, each made when the one before is drawn.</summary>
    private static IEnumerable<ArchiveLayer> Layers(ExportQuestion question, IReadOnlyList<Period> periods, Action<long, long>? progress)
    {
        for (var i = 0; i < question.Taxa.Count; i++)
        {
            yield return LayerOf(question, question.Taxa[i], periods);
            progress?.Invoke(i + 1, question.Taxa.Count);
        }
    }

    private static ArchiveLayer LayerOf(ExportQuestion question, Taxon taxon, IReadOnlyList<Period> periods)
    {
        var data = question.Data;
        // Not kept with the answers: a whole scheme would push out all that people look at.
        var map = PresenceFold.Fold(data.Cube(taxon, question.Size), periods, question.Quality, data.Effort(taxon, question.Size));
        return new(question.OfAll || question.Taxa.Count > 1 ? taxon.Id : PresenceTiles.LayerName, taxon.ScientificName, map);
    }
}
