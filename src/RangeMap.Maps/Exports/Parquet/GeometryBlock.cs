using Parquet;
using Parquet.Schema;

namespace RangeMap.Maps;

/// <summary>The places of one block of rows, with the box round each.</summary>
internal sealed class GeometryBlock(DataField geometry, DataField[] edges)
{
    private readonly List<byte[]> _places = [];
    private readonly List<double>[] _edges = [[], [], [], []];

    public int Count => _places.Count;

    public void Add(byte[] place, in DegreeBox box)
    {
        _places.Add(place);
        _edges[0].Add(box.West);
        _edges[1].Add(box.South);
        _edges[2].Add(box.East);
        _edges[3].Add(box.North);
    }

    /// <summary>Writes the block's columns and forgets them.</summary>
    public async Task WriteAsync(ParquetRowGroupWriter group, CancellationToken cancel)
    {
        await group.WriteAsync(geometry, _places).ConfigureAwait(false);
        // The boxes' group is optional in the file's schema, and there for every row: level 1.
        var present = new int[_places.Count];
        Array.Fill(present, 1);
        for (var i = 0; i < edges.Length; i++)
        {
            await group.WriteAllPartsAsync<double>(edges[i], _edges[i].ToArray(), definitionValues: present, repetitionLevels: null, cancellationToken: cancel).ConfigureAwait(false);
            _edges[i].Clear();
        }

        _places.Clear();
    }
}
