using Microsoft.AspNetCore.ResponseCompression;
using RangeMap.Maps;
using RangeMap.Store;
using Scalar.AspNetCore;

namespace RangeMap.Server;

/// <summary>The web server over one data folder: services, then middleware, then a line for each group of routes.</summary>
public static class ServerHost
{
    /// <summary>Builds the server; nothing listens until it is started.</summary>
    /// <param name="folder">The data.</param>
    /// <param name="urls">Addresses to listen on, with semicolons between them; port 0 takes a free one.</param>
    /// <param name="clock">Tells the time.</param>
    /// <param name="settings">What else the one who runs the server may set; null for the defaults.</param>
    public static WebApplication Build(DataFolder folder, string urls, TimeProvider clock, ServerOptions? settings = null)
    {
        var options = settings ?? new();
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseUrls(urls.Split(';'));
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.AddServerHeader = false);
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        // A start that fails is told in words by the command that tried it.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        var frozen = new FrozenEditions(folder.Path);
        builder.Services.AddSingleton(folder);
        builder.Services.AddSingleton(new CurrentData(folder.Database, clock, frozen, new(folder.Path)));
        builder.Services.AddSingleton(frozen);
        builder.Services.AddSingleton(_ => new ExportFolder(folder.Path, clock));
        builder.Services.AddSingleton(new Gazetteer());
        builder.Services.AddSingleton(clock);
        builder.Services.AddSingleton(new AccessRules(new TokenStore(folder.Database, clock)));
        builder.Services.AddSingleton(new UploadFolder(folder.Path, options.MostUploadBytes));
        builder.Services.AddSingleton<ImportRunner>();
        builder.Services.AddHostedService(services => services.GetRequiredService<ImportRunner>());
        builder.Services.AddProblemDetails(ProblemAnswers.Configure);
        builder.Services.Configure<RouteHandlerOptions>(routes => routes.ThrowOnBadRequest = true);
        builder.Services.AddExceptionHandler<ProblemAnswers>();
        builder.Services.AddOpenApi("v1", OpenApiDescription.Configure);
        builder.Services.AddResponseCompression(compression =>
        {
            compression.EnableForHttps = true;
            // Not tiles: they are kept packed, under a tag of their own (ReadyTile).
            compression.MimeTypes = [.. ResponseCompressionDefaults.MimeTypes, PresenceGeoJson.MediaType, NewSquaresFeed.MediaType, MapPrinter.MediaType(PrintFormat.Svg)];
        });

        var app = builder.Build();
        app.UseWarmTiles();
        app.UseRouting();
        app.UseSharedHeaders();
        app.UseExceptionHandler();
        app.UseStatusCodePages();
        app.UseResponseCompression();
        app.UseViewer();

        var api = app.MapGroup("/api/v1").AddEndpointFilter<EditionTag>();
        api.MapAbout();
        api.MapTaxa();
        api.MapPresence();
        api.MapTiles();
        api.MapPrints();
        api.MapFeeds();
        api.MapStyles();
        api.MapSpread();
        api.MapChange();
        api.MapEffort();
        api.MapForecast();
        api.MapSeason();
        api.MapDoubts();
        api.MapSquares();
        api.MapPlaces();
        api.MapRegions();
        api.MapGroups();
        api.MapExports();
        api.MapEditions();
        var personal = app.MapGroup("/api/v1").AddEndpointFilter<PersonalAnswers>();
        personal.MapImports();
        personal.MapRecords();
        personal.MapReviews();
        personal.MapNames();
        personal.MapRecorders();
        personal.MapTaxonChanges();
        personal.MapRecordExports();
        personal.MapFreezing();
        personal.MapScheme();
        app.MapGroup("/ogc").AddEndpointFilter<EditionTag>().MapOgc();
        app.MapTileMatrixSets();
        app.MapHealth();
        app.MapOpenApi("/openapi/{documentName}.json");
        app.MapScalarApiReference("/reference", page => page.WithTitle("RangeMap HTTP interface").WithOpenApiRoutePattern("/openapi/v1.json").DisableTelemetry().DisableDefaultFonts());
        return app;
    }
}

/// <summary>What the one who runs the server may set.</summary>
public sealed record ServerOptions
{
    /// <summary>Longest file that is taken over HTTP, bytes.</summary>
    public long MostUploadBytes { get; init; } = 4L << 30;
}
