using NodaTime;
using Payday.Commands;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Faults;
using Payday.Questions;
using Payday.Screens.Home;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Store.Edits;
using Payday.Store.Folders;
using Payday.Tests.Printing;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Questions;

/// <summary>The demo household in a folder for one test, asked about line by line or worked on by the screens.</summary>
internal sealed class AskedBook : IDisposable
{
    private readonly ScratchFolder folder = new();
    private readonly BookStore store;

    public AskedBook()
    {
        store = BookStore.Open(new StoreFolder(folder.Path));
        NewBook.Store(store, DemoCommand.Household(), () => Today);
    }

    public LocalDate Today { get; set; } = new(2026, 3, 6);

    /// <summary>The book as another start of the program would find it.</summary>
    public Book Book => store.Load()!;

    /// <summary>All of it but the question that was left.</summary>
    public Digest Digest => BookDigest.Of(AskPlace.In(Book, []));

    /// <summary>Another start of the program.</summary>
    public BookSession Session => new(store, Book, () => Today) { IsByLine = true };

    /// <summary>A hand on the full screen, from home.</summary>
    public Hand Hand => new(new HomeScreen(new BookSession(store, Book, () => Today)));

    /// <summary>Closes the first payday, all proposals taken.</summary>
    public AskedBook Closed()
    {
        Session.Take(Closing.Of(Routine.Plan(Book, new RoutineDraft(Routine.Next(Book).Value)).Value!).Value!);
        return this;
    }

    /// <summary>Starts asking, types lines, and ends the input.</summary>
    /// <returns>What was said, without what was typed.</returns>
    public string[] Ask(params string[] lines) => Ask(null, lines);

    /// <summary>The same, beginning with something.</summary>
    public string[] AskFor(string what, params string[] lines) => Ask(what, lines);

    /// <summary>What was said with what was typed between, as a terminal shows it.</summary>
    public string[] SaidAndAnswered(params string[] lines)
    {
        using var output = new StringWriter { NewLine = "\n" };
        Run(null, lines, output, output);
        return output.ToString().TrimEnd('\n').Split('\n');
    }

    /// <summary>What must hold whatever was typed: the money adds up, and what is stored is what was shown.</summary>
    public void IsSound()
    {
        Assert.Empty(LedgerCheck.Faults(Book.Ledger.Balances));
        Assert.Empty(store.Notices);
    }

    public void Dispose()
    {
        store.Dispose();
        folder.Dispose();
    }

    private string[] Ask(string? what, string[] lines)
    {
        using var output = new StringWriter { NewLine = "\n" };
        Run(what, lines, output, null);
        return output.ToString().TrimEnd('\n').Split('\n');
    }

    private void Run(string? what, string[] lines, StringWriter output, TextWriter? echo)
    {
        BookSession session = Session;
        var menu = new MenuPart(session);
        using var reader = new EchoReader(lines, echo);
        new Dialogue(session, new LineInput(reader), new SpokenOutput(output)).Run(menu, what is null ? null : menu.Into(what).Value);
        Assert.Equal(BookDigest.Of(Book), BookDigest.Of(session.Book));
    }
}
