using NodaTime;
using Payday.Commands;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Routines;
using Payday.Screens.Home;
using Payday.Screens.Leading;
using Payday.Screens.Watching;
using Payday.Screens.Routines;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Tests.Printing;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Screens.Looks;

/// <summary>A folder that is open once, and looked at beside that.</summary>
public sealed class LookTests : IDisposable
{
    private static readonly LocalDate Today = new(2026, 3, 2);
    private readonly ScratchFolder scratch = new();
    private readonly StoreFolder folder;
    private readonly BookStore there;
    private readonly BookSession session;
    private readonly WatchFolder door;

    public LookTests()
    {
        folder = new StoreFolder(scratch.Path);
        there = BookStore.Open(folder);
        session = NewBook.Store(there, DemoCommand.Household(), () => Today);
        door = new WatchFolder(folder, () => Today);
    }

    public void Dispose()
    {
        door.Dispose();
        there.Dispose();
        scratch.Dispose();
    }

    [Fact]
    public void Look_WhileItIsOpenElsewhere_SaysWhoHasIt()
    {
        string standing = Looked().Standing;
        Assert.StartsWith($"Only looking, no changes: process {Environment.ProcessId} since 20", standing, StringComparison.Ordinal);
        Assert.EndsWith(" has it open.", standing, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData]
    [InlineData("d")]
    [InlineData("l")]
    [InlineData("l", "o")]
    [InlineData("o")]
    [InlineData("o", "Enter")]
    [InlineData("v")]
    [InlineData("b")]
    [InlineData("?")]
    public void Look_EachKeyOfEachScreen_StoresNothing(params string[] way)
    {
        CloseOne();
        long before = there.LastChange;
        foreach (Binding key in new Hand(ScreenMap.Home(Looked())).Press(way).Top.Bindings.Where(key => key.Label is not ("print" or "PDF")))
        {
            var hand = new Hand(ScreenMap.Home(Looked()));
            Screen screen = hand.Press(way).Top;
            hand.Press(key.Name);
            Assert.True(!key.Help.StartsWith(ReadOnlyKeys.Waits, StringComparison.Ordinal) || (hand.Top == screen && screen.Message.Length > 0), $"{key.Name} of {screen.Title} neither looks nor says why not.");
        }

        Assert.Equal(before, there.LastChange);
        Assert.Null(there.Load()!.Draft);
    }

    [Fact]
    public void Home_KeysThatChange_SayWhyNotAndAreNotOnTheBottomLine()
    {
        Screen home = ScreenMap.Home(Looked());
        string[] waiting = [.. home.Bindings.Where(key => key.Help.StartsWith(ReadOnlyKeys.Waits, StringComparison.Ordinal)).Select(key => key.Name)];
        Assert.Equal(["Enter", "w", "f", "r", "@", "%", "h"], waiting);
        Assert.All(home.Bindings.Where(key => waiting.Contains(key.Name)), key => Assert.Empty(key.Label));
        Assert.StartsWith("Nothing can be changed", new Hand(home).Press("Enter").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ReadAgain_AfterAChangeThere_ShowsIt()
    {
        BookWatch looking = Looked();
        var hand = new Hand(ScreenMap.Home(looking));
        Assert.Equal("It is read again: no new ledger line.", hand.Press("Ctrl+R").Message);
        CloseOne();
        Assert.Empty(looking.Session.Book.Closed);
        Assert.Contains("new ledger lines.", hand.Press("Ctrl+R").Message, StringComparison.Ordinal);
        Assert.Single(looking.Session.Book.Closed);
    }

    [Fact]
    public void ReadAgain_AfterAChangeThere_NamesWhatWasDone()
    {
        var hand = new Hand(ScreenMap.Home(Looked()));
        CloseOne();

        string message = hand.Press("Ctrl+R").Message;

        Assert.Contains("Payday of 6 Mar: 2,287.64 in, 750.00 withdrawn.", message, StringComparison.Ordinal);
        Assert.Equal("It is read again: no new ledger line.", hand.Press("Ctrl+R").Message);
    }

    [Fact]
    public void ReadAgain_AfterWhatNoLedgerLineTells_NamesIt()
    {
        var hand = new Hand(ScreenMap.Home(Looked()));
        session.Change(session.Book.Household with { Name = "Another name" });
        session.Take(session.Book with { Draft = new RoutineDraft(Routine.Next(session.Book).Value) });

        Assert.Equal(
            "It is read again: no new ledger line. The household was changed: settings, pay, bills, debts or pots. A payday was begun.",
            hand.Press("Ctrl+R").Message);
    }

    [Fact]
    public void Glance_AfterAChangeThere_SaysSoUntilItIsRead()
    {
        BookWatch looking = Looked();
        Assert.False(looking.Glance());

        CloseOne();

        Assert.True(looking.Glance());
        Assert.EndsWith("has it open. More is stored since; Ctrl+R at home shows it.", looking.Standing, StringComparison.Ordinal);
        Assert.False(looking.Glance());
        new Hand(ScreenMap.Home(looking)).Press("Ctrl+R");
        Assert.EndsWith("has it open.", looking.Standing, StringComparison.Ordinal);
        Assert.False(looking.Glance());
    }

    [Fact]
    public void Glance_OnceNobodyHasIt_SaysSoAndThenWhatCameInBetween()
    {
        BookWatch looking = Looked();
        CloseOne();
        there.Dispose();

        Assert.True(looking.Glance());

        Assert.Equal("Only looking, no changes. Nobody else has it open: Ctrl+R at home opens it.", looking.Standing);
        using (BookStore other = BookStore.Open(folder))
        {
            Assert.True(looking.Glance());
            Assert.EndsWith("has it open. More is stored since; Ctrl+R at home shows it.", looking.Standing, StringComparison.Ordinal);
        }

        Assert.True(looking.Glance());
        string[] offer = [.. new Hand(ScreenMap.Home(looking)).Press("Ctrl+R").Top.Draw(new System.Drawing.Size(80, 24)).Lines.Select(line => line.Text)];
        Assert.Contains(offer, line => line.Contains("Since you began to look:", StringComparison.Ordinal));
        Assert.Contains(offer, line => line.Contains("Payday of 6 Mar: 2,287.64 in, 750.00 withdrawn", StringComparison.Ordinal));
    }

    // A look must never stand in the way of somebody who opens the folder: once it was seen to be free, the lock is left alone.
    [Fact]
    public void Glance_AtAFolderThatIsFree_TakesItsLockOnce()
    {
        there.Dispose();
        FolderGlance first = FolderGlance.Of(folder, null);
        Assert.True(first.IsFree);

        File.Delete(folder.Lock);
        Directory.CreateDirectory(folder.Lock);

        Assert.True(FolderGlance.Of(folder, first).IsFree);
        Assert.False(FolderGlance.Of(folder, null).IsFree);
    }

    [Fact]
    public void ReadAgain_OnceNobodyHasIt_OffersToOpenItAndThenChanges()
    {
        BookWatch looking = Looked();
        var hand = new Hand(ScreenMap.Home(looking));
        there.Dispose();

        hand.Press("Ctrl+R");
        Assert.IsType<OpenScreen>(hand.Top);
        hand.Press("Esc", "Ctrl+R", "Enter");

        Assert.IsType<HomeScreen>(hand.Top);
        Assert.Equal("", looking.Standing);
        Assert.IsType<RoutineScreen>(hand.Press("Enter").Top);
    }

    [Fact]
    public void Offer_NotTaken_LeavesTheFolderToOthers()
    {
        var hand = new Hand(ScreenMap.Home(Looked()));
        there.Dispose();
        hand.Press("Ctrl+R", "Esc");
        using BookStore other = BookStore.Open(folder);
        Assert.Equal("Nothing can be changed", hand.Press("Enter").Message[..22]);
    }

    [Fact]
    public void Session_OfALook_RefusesToStore() =>
        Assert.Throws<InvalidOperationException>(() => Looked().Session.Take(Looked().Session.Book with { Draft = new RoutineDraft(Today) }));

    private BookWatch Looked() => new(door, WatchFolder.First(folder)!, () => Today);

    private void CloseOne() => session.Take(Closing.Of(Routine.Plan(session.Book, new RoutineDraft(Routine.Next(session.Book).Value)).Value!).Value!);
}
