using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Printed maps.</summary>
internal static class PrintEndpoints
{
    public static void MapPrints(this RouteGroupBuilder api)
    {
        var taxon = api.MapGroup("/taxa/{taxon}").WithTags("Printed maps");
        foreach (var format in Enum.GetValues<PrintFormat>())
        {
            var ending = format.ToString().ToLowerInvariant();
            taxon.MapGet($"/map.{ending}", (
                    CurrentData current, DataFolder folder, string taxon, string? kind = null, string? grid = null, string? periods = null, string? quality = null, string? region = null,
                    string? from = null, string? to = null, string? size = null, string? ink = null) => Print(current, folder, format, taxon, new(kind, grid, periods, quality, region, from, to, size, ink)))
                .WithSummary($"A map to print, as {format.ToString().ToUpperInvariant()}. kind: presence, arrivals or change (with from and to); size: page (A4) or column (90 mm); ink: colour or black; region: a nation or a region that was loaded.")
                .Produces<byte[]>(contentType: MapPrinter.MediaType(format));
        }
    }

    private static IResult Print(CurrentData current, DataFolder folder, PrintFormat format, string taxon, PrintParts parts)
    {
        var data = current.Now();
        var question = PrintQuestion.Of(data, taxon, parts);
        return Results.File(PrintMap.Answer(data, folder, question, format), MapPrinter.MediaType(format), PrintMap.FileName(question, format));
    }
}
