using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>What this server holds.</summary>
internal static class AboutEndpoints
{
    public static void MapAbout(this RouteGroupBuilder api) =>
        api.MapGet("/about", About).WithTags("About").WithSummary("The name of the data, whether they are invented, and their edition.");

    private static AboutJson About(CurrentData current, DataFolder folder, TimeProvider clock)
    {
        var (edition, settings) = (current.Now().Edition, new Settings(folder.Database));
        var title = settings.Read(SettingNames.Title) ?? "RangeMap";
        return new(
            title,
            settings.Read(SettingNames.Demo) is not null,
            settings.Read(SettingNames.Notice),
            edition.Number,
            edition.MadeAt,
            CitationText.OfLive(title, edition.Number, edition.MadeAt),
            Credits.All,
            new SchemePeriods(folder, clock).Now());
    }
}

/// <summary>What this server holds.</summary>
/// <param name="Name">Title of the data.</param>
/// <param name="Demo">True for invented data.</param>
/// <param name="Notice">What a reader must be told about the data.</param>
/// <param name="Edition">The state of the data.</param>
/// <param name="Updated">When that state was made, ISO 8601.</param>
/// <param name="Citation">How to cite the live state, which is not frozen.</param>
/// <param name="Credits">Whom to credit for the map's base and for the grids.</param>
/// <param name="Periods">The periods that maps begin with, oldest first.</param>
internal sealed record AboutJson(string Name, bool Demo, string? Notice, long Edition, string Updated, string Citation, IReadOnlyList<string> Credits,
    IReadOnlyList<NamedPeriod> Periods);
