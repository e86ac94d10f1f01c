using System.CommandLine;

namespace Payday.Commands;

/// <summary>All commands.</summary>
internal static class CommandTree
{
    /// <summary>Builds them for a shell.</summary>
    public static RootCommand Build(CommandShell shell)
    {
        var root = new PaydayRoot(
            "Payday runs a household's zero-based cash budget: on each payday all that came in is placed, down to zero, and the cash pots become notes on one slip for the bank.",
            "payday demo");
        foreach (Option option in Invocation.EverywhereOptions())
        {
            root.Options.Add(option);
        }

        foreach (Command command in (Command[])
        [
            DemoCommand.Build(shell), RunCommand.Build(shell), AskCommand.Build(shell), SlipCommand.Build(shell), ShowCommand.Build(shell), ReportCommand.Build(shell), AheadCommand.Build(shell), CalendarCommand.Build(shell),
            FillCommand.Build(shell), CountCommand.Build(shell), SpendCommand.Build(shell), ReturnCommand.Build(shell), DueCommand.Build(shell), MoveCommand.Build(shell), EntryCommand.Build(shell), ReconcileCommand.Build(shell), HistoryCommand.Build(shell), DifferenceCommand.Build(shell), ReopenCommand.Build(shell), UndoCommand.Build(shell), PotCommand.Build(shell), StatusCommand.Build(shell),
            .. SetupCommands.Build(shell),
            ImportCommand.Build(shell), ExportCommand.Build(shell), StatementCommand.Build(shell), LearnCommand.Build(shell),
            CheckCommand.Build(shell), BackupCommand.Build(shell), RestoreCommand.Build(shell),
            SplitCommand.Build(shell), NotesCommand.Build(shell), DebtsCommand.Build(shell),
            PaydaysCommand.Build(shell), SetAsideCommand.Build(shell), CompletionCommand.Build(shell), HelpCommand.Build(shell, root), ManualCommand.Build(shell, root),
        ])
        {
            root.Subcommands.Add(command);
        }

        KnownNames.OfferIn(root, shell);
        return Invocation.Does(root, shell, call => call.OpensScreens ? ScreensCommand.Open(call) : call.AsksByLine ? AskCommand.Open(call) : ShowCommand.Overview(call));
    }
}
