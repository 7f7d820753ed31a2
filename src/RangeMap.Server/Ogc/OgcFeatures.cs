using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Writes features and pages of them as GeoJSON with links.</summary>
internal static class OgcFeatures
{
    /// <summary>A page of features; a link "next" stands there when, and only when, more remain.</summary>
    public static JsonObject Page(OgcLinks links, HttpRequest request, DataFolder folder, DataSnapshot data, OgcCollection collection, OgcQuery query)
    {
        var rows = OgcItems.Find(folder, data, collection, query);
        var features = new JsonArray();
        var more = false;
        long passed = 0;
        foreach (var row in rows)
        {
            if (passed++ < query.Offset)
                continue;
            if (more = features.Count == query.Limit)
                break;
            features.Add(Feature(collection, row));
        }

        var path = $"/collections/{collection.Id}/items";
        var own = path + request.QueryString;
        var document = new JsonObject { ["type"] = "FeatureCollection", ["features"] = features, ["numberReturned"] = features.Count };
        if (OgcItems.CanCount(collection, query))
            document["numberMatched"] = OgcItems.Find(folder, data, collection, query).LongCount();
        document["edition"] = data.StateName;
        document["links"] = new JsonArray([.. links.Self(own, OgcLinks.GeoJson), links.To($"/collections/{collection.Id}", "collection", OgcLinks.Json, collection.Table.Title)]);
        if (more)
            document["links"]!.AsArray().Add(links.To(path + At(request, query.Offset + query.Limit), "next", OgcLinks.GeoJson, "The features that follow"));
        if (query.Offset > 0)
            document["links"]!.AsArray().Add(links.To(path + At(request, Math.Max(0, query.Offset - query.Limit)), "prev", OgcLinks.GeoJson, "The features before"));
        return document;
    }

    /// <summary>One feature with its links.</summary>
    public static JsonObject One(OgcLinks links, OgcCollection collection, ExportRow row)
    {
        var feature = Feature(collection, row);
        var path = $"/collections/{collection.Id}";
        feature["links"] = new JsonArray([.. links.Self($"{path}/items/{Uri.EscapeDataString(collection.IdOf(row))}", OgcLinks.GeoJson), links.To(path, "collection", OgcLinks.Json, collection.Table.Title)]);
        return feature;
    }

    private static JsonObject Feature(OgcCollection collection, ExportRow row)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            json.WriteString("id", collection.IdOf(row));
            GeoJsonExport.WriteFeature(json, collection.Table, row);
            json.WriteEndObject();
        }

        return JsonNode.Parse(Encoding.UTF8.GetString(bytes.ToArray()))!.AsObject();
    }

    private static QueryString At(HttpRequest request, long offset) => QueryString.Create(
        request.Query.Where(pair => pair.Key != "offset").Append(new("offset", offset.ToString(System.Globalization.CultureInfo.InvariantCulture))));
}
