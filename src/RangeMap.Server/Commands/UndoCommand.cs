using System.CommandLine;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary><c>rangemap undo</c>: takes a whole import back.</summary>
internal static class UndoCommand
{
    public static Command Make(CommandContext context)
    {
        var batch = new Argument<long>("batch") { Description = "Number of the import, as it was told." };
        var command = new Command("undo", "Take a whole import back: its records go, and what it changed says again what it said before.") { batch, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            var folder = DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data));
            var undone = new BatchUndo(folder.Database, context.Clock).Run(parsed.GetRequiredValue(batch));
            if (parsed.GetValue(CommonOptions.Json))
                context.WriteJson(undone);
            else
                Write(context.Out, undone);
        });
        return command;
    }

    private static void Write(TextWriter to, UndoneBatch undone)
    {
        to.WriteLine(FormattableString.Invariant($"Import {undone.Batch} was taken back: {undone.Removed:N0} records are gone, {undone.Restored:N0} say again what they said before."));
        if (undone.ChangedLater > 0)
            to.WriteLine(FormattableString.Invariant($"  {undone.ChangedLater:N0} records that a later import changed stay as that one left them."));
        if (undone.RepeatedBy.Count > 0)
            to.WriteLine($"  Later imports ({string.Join(", ", undone.RepeatedBy)}) held rows that were known already. If those were rows of this import, import their files again.");
    }
}
