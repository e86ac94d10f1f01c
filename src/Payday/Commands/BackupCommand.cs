using System.CommandLine;
using System.Text.Json;
using Humanizer;
using Payday.Json;
using Payday.Store;
using Payday.Store.Backups;
using Payday.Store.Files;
using Payday.Store.Restores;

namespace Payday.Commands;

/// <summary><c>payday backup</c>: a copy that was read again, in the data folder or elsewhere.</summary>
internal static class BackupCommand
{
    public static Command Build(CommandShell shell)
    {
        var into = new Argument<string?>("DIR") { Description = "The folder to copy to. Default: backups in the data folder.", Arity = ArgumentArity.ZeroOrOne };
        var always = new Option<bool>("--always") { Description = "Copy to DIR before each closed payday too; a DIR that is missing or full then warns and hinders nothing." };
        var never = new Option<bool>("--never") { Description = "Forget the DIR of --always." };
        var command = new PaydayCommand(
            "backup",
            "Make a backup and read it again; payday restore takes it back. One is made before each closed payday anyway.",
            "payday backup /media/stick/payday") { into, always, never };
        return Invocation.Does(command, shell, call =>
        {
            string? path = call.Parsed.GetValue(into) is { } given ? Whole(given) : null;
            return (path, call.Parsed.GetValue(always), call.Parsed.GetValue(never)) switch
            {
                ("", _, _) => new Answer.WrongUse("DIR is empty; name a folder, or leave it out."),
                (null, true, _) => new Answer.WrongUse("--always needs a DIR."),
                (_, true, true) => new Answer.WrongUse("Give --always or --never, not both."),
                (_, var keeps, var forgets) => call.OnBook((store, _) => Run(store, path, keeps, forgets)),
            };
        });
    }

    // As it was typed: a blank at its end, and what leads back through a link, are part of where it is.
    private static string Whole(string given) => given.Length == 0 ? given : Path.Combine(Environment.CurrentDirectory, given);

    private static Answer Run(BookStore store, string? path, bool keeps, bool forgets)
    {
        if (path is not null && !Directory.Exists(path))
        {
            return Answer.Because($"There is no folder {path}; make it first, or plug its disk in.");
        }

        if (path is not null && store.Folder.Holds(path) && !FileFacts.AreSame(path, store.Folder.Backups))
        {
            return Answer.Because($"{path} is in the folder of Payday's own files; choose another, or leave DIR out.");
        }

        BackupFile made = StoreBackups.Make(store, path);
        if (keeps || forgets)
        {
            StoreBackups.Always(store, keeps ? path : null);
        }

        return new Answer.Done(
            [
                $"Backed up {"change".ToQuantity(made.Number)} to {made.Path}, and read it again.",
                .. forgets ? ["Closed paydays are backed up in the data folder alone from now on."] : Array.Empty<string>(),
                .. keeps ? [$"From now on each closed payday is backed up to {path} too."] : Array.Empty<string>(),
            ],
            JsonSerializer.Serialize(new BackupResult(made.Path, made.Number), ResultJson.Readable.BackupResult)) { HasChanged = true };
    }
}
