using System.Security.Cryptography;
using System.Text.Json;

namespace RangeMap.Server;

/// <summary>The frozen editions of a data folder: two files each, never changed once written.</summary>
public sealed class FrozenEditions(string dataFolder)
{
    private const string Content = "cube.bin", Description = "edition.json";
    private const int LeastDigits = 8, MostOpen = 8;

    private readonly string _folder = Path.Combine(dataFolder, "editions");
    private readonly MadeOnce<string, DataSnapshot> _open = new();

    /// <summary>All of them, the newest first.</summary>
    public IReadOnlyList<FrozenEdition> All() => !Directory.Exists(_folder) ? [] :
        [.. Directory.EnumerateDirectories(_folder).Where(folder => File.Exists(Path.Combine(folder, Description))).Select(Read).OrderByDescending(edition => edition.FrozenAt).ThenBy(edition => edition.Id, StringComparer.Ordinal)];

    /// <summary>The edition of an identifier, or of its first digits where no other begins with them.</summary>
    /// <exception cref="UserException">There is none, or several.</exception>
    public FrozenEdition Find(string id)
    {
        // Only hexadecimal digits go on to the names of folders.
        if (id.Length is < LeastDigits or > 64 || !id.All(char.IsAsciiHexDigit))
            throw Unknown(id);
        var found = All().Where(edition => edition.Id.StartsWith(id, StringComparison.OrdinalIgnoreCase)).ToList();
        return found is [var only] ? only : throw Unknown(id);
    }

    /// <summary>The data of an edition.</summary>
    /// <exception cref="UserException">There is no such edition, it was withdrawn, or its file is damaged.</exception>
    public DataSnapshot Open(string id)
    {
        var edition = Find(id);
        if (edition.Withdrawn is { } why)
            throw new UserException($"The edition {edition.Id} was withdrawn: {why}", "edition", "GET /api/v1/editions lists the others.", StatusCodes.Status410Gone);
        if (_open.Count >= MostOpen)
            _open.Clear();
        return _open.GetOrMake(edition.Id, () => Load(edition));
    }

    /// <summary>Keeps an edition; one of the same content that is there already stays as it is.</summary>
    internal (FrozenEdition Edition, bool IsNew) Keep(byte[] content, Func<string, FrozenEdition> describe)
    {
        var id = IdOf(content);
        var folder = Path.Combine(_folder, id);
        if (File.Exists(Path.Combine(folder, Description)))
            return (Read(folder), false);
        Directory.CreateDirectory(folder);
        var edition = describe(id);
        Write(Path.Combine(folder, Content), content);
        // Last: an edition is there once it is described.
        Write(Path.Combine(folder, Description), JsonSerializer.SerializeToUtf8Bytes(edition, CommandContext.Json));
        return (edition, true);
    }

    /// <summary>Stops an edition from answering; that it was there, and why it no longer answers, stays known.</summary>
    /// <exception cref="UserException">There is no such edition.</exception>
    public FrozenEdition Withdraw(string id, string reason)
    {
        var edition = Find(id) with { Withdrawn = reason };
        var folder = Path.Combine(_folder, edition.Id);
        Write(Path.Combine(folder, Description), JsonSerializer.SerializeToUtf8Bytes(edition, CommandContext.Json));
        File.Delete(Path.Combine(folder, Content));
        return edition;
    }

    /// <summary>An edition that is not there.</summary>
    internal static UserException Unknown(string id) =>
        new($"There is no frozen edition '{id}'.", "edition", "GET /api/v1/editions or rangemap edition list tells which there are; eight digits of the identifier suffice.", StatusCodes.Status404NotFound);

    private static string IdOf(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content));

    private DataSnapshot Load(FrozenEdition edition)
    {
        var content = File.ReadAllBytes(Path.Combine(_folder, edition.Id, Content));
        if (IdOf(content) != edition.Id)
            throw new UserException($"The file of the edition {edition.Id} is damaged.", "edition", "Restore it from a backup; its name is the SHA-256 of its content.", StatusCodes.Status500InternalServerError);
        return new(new FrozenState(content, edition.Id, new() { Number = edition.LiveState, MadeAt = edition.LiveStateAt }));
    }

    private static FrozenEdition Read(string folder) =>
        JsonSerializer.Deserialize<FrozenEdition>(File.ReadAllBytes(Path.Combine(folder, Description)), CommandContext.Json)!;

    private static void Write(string path, byte[] bytes)
    {
        File.WriteAllBytes(path + ".new", bytes);
        File.Move(path + ".new", path, overwrite: true);
    }
}
