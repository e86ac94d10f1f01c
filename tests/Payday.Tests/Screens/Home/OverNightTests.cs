using System.Drawing;
using NodaTime;
using Payday.Commands;
using Payday.Screens.Home;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Tests.Printing;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Screens.Home;

public class OverNightTests
{
    [Fact]
    public void Home_LeftOpenOverNight_ShowsTheNewDate()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = BookStore.Open(new StoreFolder(scratch.Path));
        var date = new LocalDate(2026, 3, 5);
        var home = new HomeScreen(NewBook.Store(store, DemoCommand.Household(), () => date));

        Assert.Contains("Thu 5 Mar 2026", Title(home), StringComparison.Ordinal);
        date = date.PlusDays(1);
        Assert.Contains("Fri 6 Mar 2026", Title(home), StringComparison.Ordinal);
    }

    [Fact]
    public void Purchase_FormBegunYesterday_IsOfToday()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = BookStore.Open(new StoreFolder(scratch.Path));
        var date = new LocalDate(2026, 3, 5);
        Hand hand = new Hand(new HomeScreen(NewBook.Store(store, DemoCommand.Household(), () => date))).Press("b", "a").Type("Corner shop").Press("Esc");

        date = date.PlusDays(1);
        hand.Press("a");

        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.EndsWith("Fri 6 Mar 2026", StringComparison.Ordinal));
    }

    private static string Title(HomeScreen home) => home.Draw(new Size(80, 24)).Lines[0].Text;
}
