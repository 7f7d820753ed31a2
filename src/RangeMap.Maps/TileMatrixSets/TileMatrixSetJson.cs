using System.Globalization;
using System.Text.Json;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Writes a tile matrix set in the JSON form of OGC Two Dimensional Tile Matrix Set and Tile Set Metadata 2.0 (17-083r4).</summary>
public static class TileMatrixSetJson
{
    /// <summary>Side of the standard's rendering cell, metres: a scale denominator is the cell size divided by it.</summary>
    private const double StandardCell = 0.00028;

    /// <summary>Writes the definition to a stream, which stays open.</summary>
    public static async Task WriteAsync(Stream output, TileMatrixSet set, CancellationToken cancel = default)
    {
        var json = new Utf8JsonWriter(output);
        await using var _ = json.ConfigureAwait(false);
        Write(json, set);
        await json.FlushAsync(cancel).ConfigureAwait(false);
    }

    /// <summary>Writes the definition as one JSON object.</summary>
    public static void Write(Utf8JsonWriter json, TileMatrixSet set)
    {
        var registered = set.Id == TileMatrixSet.WebMercatorQuad.Id;
        json.WriteStartObject();
        json.WriteString("id"u8, set.Id);
        json.WriteString("title"u8, registered ? "Web Mercator, square world" : "British National Grid, cells that nest in 10 km squares");
        if (registered)
            json.WriteString("uri"u8, "http://www.opengis.net/def/tilematrixset/OGC/1.0/WebMercatorQuad"u8);
        json.WriteString("crs"u8, string.Create(CultureInfo.InvariantCulture, $"http://www.opengis.net/def/crs/EPSG/0/{set.Plane.Epsg}"));
        json.WriteStartArray("orderedAxes"u8);
        foreach (var axis in registered ? (string[])["X", "Y"] : ["E", "N"])
            json.WriteStringValue(axis);
        json.WriteEndArray();
        json.WriteStartArray("tileMatrices"u8);
        for (var zoom = 0; zoom <= set.MaxZoom; zoom++)
            WriteMatrix(json, set, zoom);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteMatrix(Utf8JsonWriter json, TileMatrixSet set, int zoom)
    {
        json.WriteStartObject();
        json.WriteString("id"u8, zoom.ToString(CultureInfo.InvariantCulture));
        json.WriteNumber("scaleDenominator"u8, set.CellSize(zoom) / StandardCell);
        json.WriteNumber("cellSize"u8, set.CellSize(zoom));
        json.WriteString("cornerOfOrigin"u8, "topLeft"u8);
        json.WriteStartArray("pointOfOrigin"u8);
        json.WriteNumberValue(set.TopLeft.Easting);
        json.WriteNumberValue(set.TopLeft.Northing);
        json.WriteEndArray();
        json.WriteNumber("tileWidth"u8, TileMatrixSet.TileSize);
        json.WriteNumber("tileHeight"u8, TileMatrixSet.TileSize);
        json.WriteNumber("matrixWidth"u8, set.MatrixSize(zoom));
        json.WriteNumber("matrixHeight"u8, set.MatrixSize(zoom));
        json.WriteEndObject();
    }
}
