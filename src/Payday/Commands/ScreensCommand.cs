using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Screens.Home;
using Payday.Screens.Leading;
using Payday.Screens.Watching;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.HouseholdFiles;

namespace Payday.Commands;

/// <summary>
/// <c>payday</c> alone at a terminal: the full screen; where there is no household yet, the way to one; where another
/// process has it open, a look at it.
/// </summary>
internal static class ScreensCommand
{
    public static Answer Open(Invocation call)
    {
        BookStore store;
        try
        {
            store = BookStore.Open(call.Folder);
        }
        catch (StoreException fault) when (fault.Fault is FolderFault.Taken && call.Folder.HasBook && WatchFolder.First(call.Folder) is { } seen)
        {
            return Look(call, seen);
        }

        using (store)
        {
            return Change(call, store);
        }
    }

    private static Answer.Done Change(Invocation call, BookStore store)
    {
        using var demo = new DemoFolder();
        Book? stored = store.Load();
        int told = call.Tell(store, 0);
        FullScreen.Run(
            stored is { } book
            ? Home(new BookSession(store, book, call.Shell.Today))
            : new StartScreen(new StartDoor(store, call.Shell.Today, path => Offer(call.Shell, path), demo.Open) { Locale = FullScreen.Locale }),
            new ScreenMap().Lead);

        // Also what was said on the screen: here it stays in sight.
        store.FinishBackups();
        call.Tell(store, told);
        return new Answer.Done([], "{}");
    }

    private static Answer.Done Look(Invocation call, Seen seen)
    {
        using var folder = new WatchFolder(call.Folder, call.Shell.Today);
        var looking = new BookWatch(folder, seen, call.Shell.Today);
        FullScreen.Run(ScreenMap.Home(looking), new ScreenMap().Lead, () => looking.Standing, looking.Glance);
        return new Answer.Done([], "{}");
    }

    // What was mended at opening is said where it is read.
    private static HomeScreen Home(BookSession session) => new(session) { Message = session.News() };

    private static HouseholdOffer Offer(CommandShell shell, string path)
    {
        Household? found = null;
        // On the screen standard input is the keyboard: nothing but a file is read.
        Answer answer = CommandInput.WithFile(shell, path == "-" ? "./-" : path, HouseholdFile.Read, household =>
        {
            found = household;
            return new Answer.Done([], "{}");
        });
        return new HouseholdOffer(found, answer is Answer.Refused refused ? [.. refused.Reasons] : []);
    }
}
