using System.Text.Json;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>
/// The content of a frozen edition: what maps, tiles and exports of squares need, already generalised for the public. Its bytes are
/// canonical: equal data give equal bytes, and their SHA-256 is the edition's name.
/// </summary>
internal sealed class FrozenState : IPublishedState
{
    private const string Mark = "RangeMap edition 1";

    private readonly List<Taxon> _taxa = [];
    private readonly Dictionary<int, byte[]> _cubes = [];
    private readonly byte[] _visits;

    /// <summary>Reads an edition.</summary>
    /// <exception cref="InvalidDataException">The bytes are no edition.</exception>
    public FrozenState(byte[] content, string id, Edition edition)
    {
        (FrozenId, Edition) = (id, edition);
        using var reader = new BinaryReader(new MemoryStream(content, writable: false));
        if (reader.ReadString() != Mark)
            throw new InvalidDataException("This is no edition.");
        foreach (var row in JsonSerializer.Deserialize<List<TaxonRow>>(reader.ReadString())!)
        {
            _taxa.Add(row.ToTaxon());
            if (reader.ReadInt32() is > 0 and var length)
                _cubes[row.Number] = reader.ReadBytes(length);
        }

        _visits = reader.ReadBytes(reader.ReadInt32());
    }

    public Edition Edition { get; }

    public string FrozenId { get; }

    /// <summary>The content of a snapshot.</summary>
    public static byte[] ContentOf(DataSnapshot data)
    {
        using var content = new MemoryStream();
        using var writer = new BinaryWriter(content);
        writer.Write(Mark);
        var taxa = data.Taxa.OrderBy(taxon => taxon.Number).ToList();
        writer.Write(JsonSerializer.Serialize(taxa.Select(TaxonRow.Of)));
        foreach (var taxon in taxa)
            Write(writer, CubeCodec.Pack(data.Own(taxon)));
        Write(writer, data.Visits.Pack());
        writer.Flush();
        return content.ToArray();
    }

    public IReadOnlyList<Taxon> ReadTaxa() => _taxa;

    public IReadOnlyList<Synonym> ReadSynonyms() => [];

    public IReadOnlyDictionary<int, string> ReadNames() => _taxa.ToDictionary(taxon => taxon.Number, taxon => taxon.ScientificName);

    public TaxonCube ReadCube(int taxon) => _cubes.TryGetValue(taxon, out var packed) ? CubeCodec.Unpack(packed) : TaxonCube.Empty;

    public VisitLog ReadVisits() => _visits.Length == 0 ? VisitLog.Empty : VisitLog.Unpack(_visits);

    /// <summary>Seasons are no part of an edition.</summary>
    public IReadOnlyList<SeasonEntry> ReadSeason(IReadOnlyCollection<int> taxa) => [];

    /// <summary>Regions are no part of an edition.</summary>
    public IReadOnlyList<StoredRegion> ReadRegions() => [];

    private static void Write(BinaryWriter writer, byte[] part)
    {
        writer.Write(part.Length);
        writer.Write(part);
    }

    /// <summary>What an edition keeps of a taxon: what maps, tiles and exports show.</summary>
    private sealed record TaxonRow(int Number, string Id, string ScientificName, string? Authorship, string? Rank, string? VernacularName, string? Group, string? AggregateId, string? GeneraliseTo)
    {
        public static TaxonRow Of(Taxon taxon) => new(
            taxon.Number, taxon.Id, taxon.ScientificName, taxon.Authorship, taxon.Rank, taxon.VernacularName, taxon.Group, taxon.AggregateId, taxon.GeneraliseTo?.ToText());

        public Taxon ToTaxon() => new(Id, ScientificName)
        {
            Number = Number,
            Authorship = Authorship,
            Rank = Rank,
            VernacularName = VernacularName,
            Group = Group,
            AggregateId = AggregateId,
            GeneraliseTo = GeneraliseTo is { } text && SquareSizeText.TryParse(text, out var size) ? size : null,
        };
    }
}
