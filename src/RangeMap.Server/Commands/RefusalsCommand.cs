using System.CommandLine;
using System.Globalization;
using System.Text;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary><c>rangemap refusals</c>: the refused rows of a batch as a CSV file that can be mended and imported again.</summary>
internal static class RefusalsCommand
{
    public static Command Make(CommandContext context)
    {
        var batch = new Argument<long>("batch") { Description = "Number of the import, as it was told." };
        var command = new Command("refusals", "Write the refused rows of an import, to mend and import again.") { batch, CommonOptions.Output, CommonOptions.Data };
        command.SetAction(parsed =>
        {
            var folder = DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data));
            var number = parsed.GetRequiredValue(batch);
            if (parsed.GetValue(CommonOptions.Output) is { } file)
                Write(folder, number, file);
            else
                Write(folder, number, context.Out);
        });
        return command;
    }

    /// <summary>Writes them to a file.</summary>
    public static void Write(DataFolder folder, long batch, string file)
    {
        using var writer = new StreamWriter(file, append: false, new UTF8Encoding(false));
        Write(folder, batch, writer);
    }

    private static void Write(DataFolder folder, long batch, TextWriter writer)
    {
        var found = new BatchStore(folder.Database).Read(batch)
            ?? throw new UserException(string.Create(CultureInfo.InvariantCulture, $"There is no import number {batch}."), "batch", "rangemap import tells each import's number.");
        RefusedRows.Write(folder, found, writer);
    }
}
