using System.CommandLine;

namespace Payday.Commands;

/// <summary><c>payday reopen</c>: the last closed payday taken up again.</summary>
internal static class ReopenCommand
{
    public static Command Build(CommandShell shell)
    {
        var drop = new Option<bool>("--drop") { Description = "What was decided for a later payday that is begun goes." };
        var command = new PaydayCommand(
            "reopen",
            "Take the last closed payday up again, with all that was decided for it; the reverse of each ledger line that it wrote is written.",
            "payday reopen") { drop };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) => UndoCommand.Payday(store, book, shell.Today(), call.Parsed.GetValue(drop))));
    }
}
