using Microsoft.Extensions.FileProviders;

namespace RangeMap.Server;

/// <summary>Hosts the built viewer, which lies beside the program.</summary>
internal static class Viewer
{
    public static void UseViewer(this WebApplication app)
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "viewer");
        if (!Directory.Exists(folder))
        {
            app.MapGet("/", () => Results.Text("RangeMap is running, but its viewer was not built. The HTTP interface is described at /reference.")).ExcludeFromDescription();
            return;
        }

        var files = new PhysicalFileProvider(folder);
        app.UseDefaultFiles(new DefaultFilesOptions { FileProvider = files });
        app.UseStaticFiles(new StaticFileOptions
        {
            FileProvider = files,
            OnPrepareResponse = file => file.Context.Response.Headers.CacheControl =
                // Vite puts a hash of the content into the names of these.
                file.Context.Request.Path.StartsWithSegments("/assets", StringComparison.Ordinal) ? "public, max-age=31536000, immutable" : "no-cache",
        });
    }
}
