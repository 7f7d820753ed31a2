using System.Globalization;
using System.Text;
using System.Xml;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>A place to go to.</summary>
/// <param name="Square">The square; the waypoint is its middle.</param>
/// <param name="Description">Why to go there.</param>
public sealed record Waypoint(Square Square, string Description);

/// <summary>Middles of squares as waypoints for a hand-held receiver or a telephone (GPX 1.1, Topografix 2004).</summary>
public static class WaypointsGpx
{
    /// <summary>The media type in use.</summary>
    public const string MediaType = "application/gpx+xml";

    private const string Namespace = "http://www.topografix.com/GPX/1/1";

    /// <summary>Writes the waypoints to a stream, which stays open.</summary>
    /// <param name="output">The stream.</param>
    /// <param name="title">Name of the file's contents.</param>
    /// <param name="caution">What to bear in mind, for the file and so for the device.</param>
    /// <param name="waypoints">The places.</param>
    public static async Task WriteAsync(Stream output, string title, string caution, IEnumerable<Waypoint> waypoints)
    {
        var xml = XmlWriter.Create(output, new() { Async = true, Indent = true, Encoding = new UTF8Encoding(false), CheckCharacters = true });
        await using var _ = xml.ConfigureAwait(false);
        await xml.WriteStartDocumentAsync().ConfigureAwait(false);
        xml.WriteStartElement("gpx", Namespace);
        xml.WriteAttributeString("version", "1.1");
        xml.WriteAttributeString("creator", "RangeMap");
        xml.WriteStartElement("metadata", Namespace);
        xml.WriteElementString("name", Namespace, title);
        xml.WriteElementString("desc", Namespace, caution);
        await xml.WriteEndElementAsync().ConfigureAwait(false);
        foreach (var (square, description) in waypoints)
        {
            var middle = NationalGrid.Get(square.Grid).ToLatLon(square.Centre);
            xml.WriteStartElement("wpt", Namespace);
            xml.WriteAttributeString("lat", Degrees(middle.Latitude));
            xml.WriteAttributeString("lon", Degrees(middle.Longitude));
            xml.WriteElementString("name", Namespace, square.ToString());
            xml.WriteElementString("desc", Namespace, description);
            await xml.WriteEndElementAsync().ConfigureAwait(false);
        }

        await xml.WriteEndElementAsync().ConfigureAwait(false);
        await xml.WriteEndDocumentAsync().ConfigureAwait(false);
        await xml.FlushAsync().ConfigureAwait(false);
    }

    private static string Degrees(double value) => value.ToString("0.000000", CultureInfo.InvariantCulture);
}
