using System.CommandLine;
using System.Text.Json;
using Payday.Core.Books;
using Payday.Json;
using Payday.Store;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>One call of a command: the shell, and the options that every command has.</summary>
/// <param name="Shell">The shell.</param>
/// <param name="Parsed">The command line.</param>
internal sealed record Invocation(CommandShell Shell, ParseResult Parsed)
{
    private const string Data = "--data";
    private const string Json = "--json";

    /// <summary>The data folder.</summary>
    public StoreFolder Folder => Parsed.GetValue<string?>(Data) is { } path
        ? new StoreFolder(Path.GetFullPath(path))
        : Shell.DefaultFolder();

    /// <summary>Whether there is a person at a terminal to show screens to.</summary>
    public bool OpensScreens => Shell.HasTerminal && !IsForScripts;

    /// <summary>Whether there is a person at a terminal that can show lines alone, one after the other.</summary>
    public bool AsksByLine => Shell.HasPlainTerminal && !IsForScripts;

    /// <summary>Whether the answer is for a script.</summary>
    public bool IsForScripts => Parsed.GetValue<bool>(Json);

    /// <summary>Whether the answer of a command line is for a script, also where it isn't called right.</summary>
    public static bool WantsJson(ParseResult parsed) => parsed.Tokens.Any(token => token.Value == Json);

    /// <summary>The options that every command has: the data folder, and the answer in JSON.</summary>
    public static IEnumerable<Option> EverywhereOptions()
    {
        var data = new Option<string?>(Data)
        {
            Description = "The data folder. Default: payday in the XDG data folder.",
            HelpName = "DIR",
            Recursive = true,
        };

        // A script's unset variable must not end in a person's own household.
        data.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: "" }])
            {
                result.AddError("--data is empty; name a folder, or leave it out.");
            }
        });
        return [data, new Option<bool>(Json) { Description = "Answer in JSON, for scripts.", Recursive = true }];
    }

    /// <summary>Makes a command do its work and tell the shell.</summary>
    /// <param name="command">The command.</param>
    /// <param name="shell">The shell.</param>
    /// <param name="work">The work.</param>
    /// <param name="codeAnswers">Whether its exit code is its answer; see <see cref="CommandLine.Tell"/>.</param>
    public static T Does<T>(T command, CommandShell shell, Func<Invocation, Answer> work, bool codeAnswers = false)
        where T : Command
    {
        command.SetAction(parsed => CommandLine.Tell(
            shell, parsed, parsed.GetValue<bool>(Json), codeAnswers, () => work(new Invocation(shell, parsed))));
        return command;
    }

    /// <summary>Opens the store, loads the book and works on it.</summary>
    public Answer OnBook(Func<BookStore, Book, Answer> work) => Folder.HasBook
        ? OnStore((store, book) => book is null ? NoHousehold() : work(store, book))
        : NoHousehold();

    /// <summary>Works on the book: where that changes something as <see cref="OnBook(Func{BookStore, Book, Answer})"/> does, else as <see cref="OnLook"/>.</summary>
    /// <param name="changes">Whether what was asked for changes the book; where not, the work gets no store.</param>
    /// <param name="work">The work.</param>
    /// <remarks>What only shows something never waits for another process to close the book.</remarks>
    public Answer OnBook(bool changes, Func<BookStore, Book, Answer> work) => changes ? OnBook(work) : OnLook(book => work(null!, book));

    /// <summary>Opens the store, making it where it is missing, and works on it; the book is null where there is no household yet.</summary>
    /// <remarks>Once a change is stored no fault can make a refusal of it any more: it is told beside the answer, or in its place.</remarks>
    public Answer OnStore(Func<BookStore, Book?, Answer> work)
    {
        Answer? stored = null;
        try
        {
            using BookStore store = BookStore.Open(Folder);
            Book? book = store.Load();
            long before = store.LastChange;
            int told = Tell(store, 0);
            try
            {
                Answer answer = work(store, book);
                stored = store.LastChange != before ? answer with { HasChanged = true } : null;
                store.FinishBackups();
                Tell(store, told);
                return stored ?? answer;
            }
            catch (Exception fault) when (stored is null && store.LastChange != before && fault is not OutOfMemoryException)
            {
                stored = Untold(fault);
                throw;
            }
        }
        catch (Exception fault) when (stored is not null && fault is not OutOfMemoryException)
        {
            Note(CommandLine.Sentence(fault));
            return stored;
        }
    }

    /// <summary>Loads the book to look at it; where another process has it open, as that last stored it.</summary>
    public Answer OnLook(Func<Book, Answer> work)
    {
        try
        {
            return OnBook((_, book) => work(book));
        }
        catch (StoreException fault) when (fault.Fault is FolderFault.Taken)
        {
            BookPeek look = BookStore.Peek(Folder);
            Note($"Another Payday has {Folder.Path} open ({FolderTexts.Holder(look.Holder)}). This is a look at what is stored.");
            return look.Book is { } book ? work(book) : NoHousehold();
        }
    }

    /// <summary>That there is nothing yet.</summary>
    public Answer NoHousehold() => Answer.Because(Folder.Hindrance is { } hindrance
        ? FolderTexts.Of(hindrance)
        : $"There is no household in {Folder.Path} yet. Look at one with payday demo, or bring your own with payday import FILE.");

    /// <summary>Says what the store found and mended, beside the answer.</summary>
    /// <param name="store">The store.</param>
    /// <param name="told">How many notices were told before.</param>
    /// <returns>How many are told now.</returns>
    public int Tell(BookStore store, int told)
    {
        foreach (StoreFault notice in store.Notices.Skip(told))
        {
            Note(StoreTexts.Of(notice));
        }

        return store.Notices.Length;
    }

    private static Answer.Done Untold(Exception fault)
    {
        string what = $"It is stored. What it came to can't be shown: {CommandLine.Sentence(fault)}";
        return new Answer.Done([what], JsonSerializer.Serialize(new DoneResult(what), ResultJson.Readable.DoneResult)) { HasChanged = true };
    }

    private void Note(string notice) => Shell.Error.WriteLine("payday: note: " + Text.CleanText.OneLine(notice));
}
