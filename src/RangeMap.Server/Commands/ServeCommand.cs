using System.CommandLine;
using System.Net.Sockets;

namespace RangeMap.Server;

/// <summary><c>rangemap serve</c>: serves a data folder until it is stopped.</summary>
internal static class ServeCommand
{
    public static Option<string> Urls { get; } = new("--urls")
    {
        Description = "Addresses to listen on. Only this machine can reach the default.",
        HelpName = "URLS",
        DefaultValueFactory = _ => "http://127.0.0.1:5080",
    };

    public static Command Make(CommandContext context)
    {
        var command = new Command("serve", "Serve a data folder over HTTP.") { CommonOptions.Data, Urls };
        command.SetAction(async (parsed, cancel) =>
        {
            await ServeAsync(DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data)), parsed.GetRequiredValue(Urls), context, cancel);
            return ExitCode.Done;
        });
        return command;
    }

    /// <summary>Serves, says where, and returns when told to stop.</summary>
    public static async Task ServeAsync(DataFolder folder, string urls, CommandContext context, CancellationToken cancel)
    {
        await using var host = ServerHost.Build(folder, urls, context.Clock);
        try
        {
            await host.StartAsync(cancel);
        }
        catch (Exception error) when (error is IOException or SocketException or FormatException or InvalidOperationException or ArgumentException)
        {
            throw new UserException($"The server cannot listen: {error.Message}", urls, "Stop what uses the address, or name another with --urls http://127.0.0.1:PORT.");
        }

        context.Out.WriteLine($"RangeMap serves {Path.GetFullPath(folder.Path)} at {string.Join(" and ", host.Urls)}");
        context.Out.WriteLine("Open the address in a browser. Ctrl+C stops the server.");
        await host.WaitForShutdownAsync(cancel);
    }
}
