namespace RangeMap.Server;

/// <summary>What goes back to recorders.</summary>
internal static class RecorderEndpoints
{
    public static void MapRecorders(this RouteGroupBuilder api)
    {
        var recorders = api.MapGroup("/recorders/{recorder}").Require(Right.Review).WithTags("Recorders");
        recorders.MapGet("/sheet.csv", Csv).WithSummary("A recorder's records with what is asked about them and what was decided, as a table.");
        recorders.MapGet("/sheet.html", Html).WithSummary("The same as a page to read, print or send.");
    }

    private static IResult Csv(DataFolder folder, CurrentData current, string recorder)
    {
        var sheet = new RecorderSheet(folder, current.Now(), recorder).Checked();
        return Results.Stream(to => RecorderSheetCsv.WriteAsync(to, sheet), "text/csv; charset=utf-8", "records.csv");
    }

    private static IResult Html(DataFolder folder, CurrentData current, string recorder)
    {
        var sheet = new RecorderSheet(folder, current.Now(), recorder).Checked();
        return Results.Stream(to => RecorderSheetHtml.WriteAsync(to, sheet), "text/html; charset=utf-8");
    }
}
