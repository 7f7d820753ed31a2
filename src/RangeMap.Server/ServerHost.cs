using Microsoft.AspNetCore.ResponseCompression;
using RangeMap.Maps;
using Scalar.AspNetCore;

namespace RangeMap.Server;

/// <summary>The web server over one data folder: services, then middleware, then a line for each group of routes.</summary>
public static class ServerHost
{
    /// <summary>Builds the server; nothing listens until it is started.</summary>
    /// <param name="folder">The data.</param>
    /// <param name="urls">Addresses to listen on, with semicolons between them; port 0 takes a free one.</param>
    /// <param name="clock">Tells the time.</param>
    public static WebApplication Build(DataFolder folder, string urls, TimeProvider clock)
    {
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseUrls(urls.Split(';'));
        builder.WebHost.ConfigureKestrel(options => options.AddServerHeader = false);
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        // A start that fails is told in words by the command that tried it.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        builder.Services.AddSingleton(folder);
        builder.Services.AddSingleton(new CurrentData(folder.Database, clock));
        builder.Services.AddSingleton(new Gazetteer());
        builder.Services.AddProblemDetails(ProblemAnswers.Configure);
        builder.Services.Configure<RouteHandlerOptions>(options => options.ThrowOnBadRequest = true);
        builder.Services.AddExceptionHandler<ProblemAnswers>();
        builder.Services.AddOpenApi("v1", OpenApiDescription.Configure);
        builder.Services.AddResponseCompression(options =>
        {
            options.EnableForHttps = true;
            options.MimeTypes = [.. ResponseCompressionDefaults.MimeTypes, PresenceGeoJson.MediaType, TileEndpoints.MediaType];
        });

        var app = builder.Build();
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
        api.MapSpread();
        api.MapSquares();
        api.MapPlaces();
        app.MapTileMatrixSets();
        app.MapHealth();
        app.MapOpenApi("/openapi/{documentName}.json");
        app.MapScalarApiReference("/reference", options => options.WithTitle("RangeMap HTTP interface").WithOpenApiRoutePattern("/openapi/v1.json").DisableTelemetry().DisableDefaultFonts());
        return app;
    }
}
