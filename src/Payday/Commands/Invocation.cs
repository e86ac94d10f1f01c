using System.CommandLine;
using Payday.Core.Households;
using Payday.Store;

namespace Payday.Commands;

/// <summary>One call of a command: the shell, and the options that every command has.</summary>
/// <param name="Shell">The shell.</param>
/// <param name="Parsed">The command line.</param>
internal sealed record Invocation(CommandShell Shell, ParseResult Parsed)
{
    /// <summary>The option that names the data folder.</summary>
    public static Option<string?> Data { get; } = new("--data")
    {
        Description = "The data folder. Default: payday in the XDG data folder.",
        HelpName = "DIR",
        Recursive = true,
    };

    /// <summary>The option that asks for JSON.</summary>
    public static Option<bool> Json { get; } = new("--json")
    {
        Description = "Answer in JSON, for scripts.",
        Recursive = true,
    };

    /// <summary>The data folder.</summary>
    public StoreFolder Folder => Parsed.GetValue(Data) is { Length: > 0 } path
        ? new StoreFolder(Path.GetFullPath(path))
        : Shell.DefaultFolder;

    /// <summary>Whether there is a person at a terminal to show screens to.</summary>
    public bool OpensScreens => Shell.HasTerminal && !Parsed.GetValue(Json);

    /// <summary>Makes a command do its work and tell the shell.</summary>
    public static Command Does(Command command, CommandShell shell, Func<Invocation, Answer> work)
    {
        command.SetAction(parsed => CommandLine.Tell(
            shell, parsed.GetValue(Json), () => work(new Invocation(shell, parsed))));
        return command;
    }

    /// <summary>Opens the store, loads the book and works on it.</summary>
    public Answer OnBook(Func<BookStore, Book, Answer> work)
    {
        if (!Folder.HasBook)
        {
            return NoHousehold();
        }

        using BookStore store = BookStore.Open(Folder);
        return store.Load() is { } book ? work(store, book) : NoHousehold();
    }

    private Answer NoHousehold() =>
        Answer.Because($"There is no household in {Folder.Path} yet. Look at one with payday demo, or bring your own with payday import FILE.");
}
