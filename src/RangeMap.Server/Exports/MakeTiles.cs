using RangeMap.Maps;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Makes an archive of vector tiles of one taxon or of many.</summary>
internal static class MakeTiles
{
    /// <summary>Writes the archive to a new file.</summary>
    /// <returns>How many tiles it has.</returns>
    /// <exception cref="UserException">There is nothing to draw.</exception>
    public static async Task<long> WriteAsync(
        DataFolder folder, ExportQuestion question, IReadOnlyList<Period> periods, string path, Action<long, long>? progress, CancellationToken cancel)
    {
        var layers = question.Taxa.Select(taxon => LayerOf(question, taxon, periods)).Where(layer => layer.Map.Squares.Count > 0).ToList();
        if (layers.Count == 0)
            throw new UserException("There is no square to draw.", "taxon", "Ask for other taxa, a coarser grid or another quality.", StatusCodes.Status404NotFound);
        await using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1 << 16);
        return await PresenceArchive.WriteAsync(file, path + ".part", layers, MakeExport.SourceOf(folder, question), string.Join("; ", Credits.All), progress, cancel);
    }

    private static ArchiveLayer LayerOf(ExportQuestion question, Taxon taxon, IReadOnlyList<Period> periods)
    {
        var data = question.Data;
        // Not kept with the answers: a whole scheme would push out all that people look at.
        var map = PresenceFold.Fold(data.Cube(taxon, question.Size), periods, question.Quality, data.Effort(taxon, question.Size));
        return new(question.OfAll || question.Taxa.Count > 1 ? taxon.Id : PresenceTiles.LayerName, taxon.ScientificName, map);
    }
}
