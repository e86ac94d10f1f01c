using System.Drawing;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Reconciling;
using Payday.Core.Status;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Home;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Screens.Home;

/// <summary>Home where there is little room: what doesn't show is said to be below, whatever is said above the keys.</summary>
public sealed class HomeRoomTests : IDisposable
{
    private readonly DemoBook demo = new();

    public static TheoryData<int, int, bool, string> Rooms
    {
        get
        {
            var rooms = new TheoryData<int, int, bool, string>();
            foreach (bool closed in new[] { false, true })
            {
                foreach (string message in new[] { "", "3 pots counted, 23.00 spent.", string.Concat(Enumerable.Repeat("A sentence that is longer than its line. ", 4)) })
                {
                    rooms.AddRange((60, 20, closed, message), (80, 24, closed, message), (132, 40, closed, message));
                    for (int height = 21; height < 40; height += 3)
                    {
                        rooms.Add(80, height, closed, message);
                    }
                }
            }

            return rooms;
        }
    }

    public void Dispose() => demo.Dispose();

    [Theory]
    [MemberData(nameof(Rooms))]
    public void Home_InAnyRoom_CountsWhatIsBelow_AndLeadsToAllOfIt(int width, int height, bool closed, string message)
    {
        if (closed)
        {
            demo.CloseOne();
        }

        var size = new Size(width, height);
        var screen = new HomeScreen(demo.Session) { Message = message };
        string[] all = Page(new HomeScreen(demo.Session), new Size(width, 200));
        int last = Array.FindLastIndex(all, line => line.Length > 0) + 1;

        string[] seen = [.. screen.Draw(size).Lines.Select(line => line.Text.TrimEnd())];
        int shown = all.Take(last).TakeWhile((line, i) => i < seen.Length && seen[i] == line).Count();
        if (shown < last)
        {
            Assert.Contains(seen, line => line.StartsWith($" {last - shown} more line", StringComparison.Ordinal));
        }

        // Each due and each debt can be reached.
        var reached = new HashSet<string>(seen);
        for (int i = 0; i < last; i++)
        {
            screen.Bindings.Single(key => key.Name == "Down").Do();
            reached.UnionWith(screen.Draw(size).Lines.Select(line => line.Text.TrimEnd()));
        }

        Assert.Empty(all.Take(last).Where(line => !line.Contains("The account over the next", StringComparison.Ordinal)).Except(reached));
    }

    // What a count found asks for nothing: another sign and no alarm, and both name their keys.
    [Fact]
    public void Home_WithWhatCountsMissedAndFound_AlarmsOnlyAtWhatIsMissing()
    {
        demo.CloseOne();
        Money five = Money.Parse("5.00", demo.Household.Currency, demo.Session.Style).Value;
        Book book = demo.Session.Book;
        WeekCount Count(long number, string pot, Money difference, string name) =>
            new(number, demo.Session.Today, demo.Session.Today, demo.Household.Pots.Single(one => one.Name == pot).Id, null, five, five, five, five, five, null, five, difference, name, null, 1, 0, null);
        demo.Session.Take(book with { Weeks = book.Weeks with { Counts = [Count(1, "Food", five, "Dropped"), Count(2, "Fares", -five, "Seat")] } });

        FrameLine[] lines = [.. new HomeScreen(demo.Session).Draw(new Size(80, 60)).Lines];

        Assert.Equal(Ink.Alert, Inks(" ! 5.00 missing from Food", "(w, then g)."));
        Assert.Equal(Ink.Plain, Inks(" + 5.00 found in Fares", "(w, then g)."));

        Ink Inks(string begins, string ends)
        {
            FrameLine line = lines.Single(one => one.Text.StartsWith(begins, StringComparison.Ordinal));
            Assert.EndsWith(ends, line.Text.TrimEnd(), StringComparison.Ordinal);
            return line.Spans[0].Ink;
        }
    }

    // The account here, what is on the way and the bank's own balance: home and statement name all three.
    [Fact]
    public void Home_WithAPaymentOnItsWay_AddsUpToTheBank()
    {
        demo.CloseOne();
        ReconciliationPlan plan = ReconciliationPlan.Of(demo.Session.Book, demo.Session.Today).TickAll();
        plan = plan.Tick(PaymentToMake.Of(demo.Session.Book)[0].Line).Value!;
        demo.Session.Take(plan.WithBalance(plan.Expected).Accept().Value!);
        string bank = (plan.Here + PaymentToMake.Of(demo.Session.Book)[0].Amount).ToString(demo.Session.Style);

        string[] lines = [.. new HomeScreen(demo.Session).Draw(new Size(80, 60)).Lines.Select(line => line.Text.TrimEnd())];

        Assert.Contains(" ! Pay 246.46 to Dental plan yourself (q).", lines);
        Assert.Contains($" 246.46 out on the way; the bank should show {bank}.", lines);
        Assert.Equal("So the account agrees with the bank on 5 Mar, with 246.46 out on the way.", PlanText.Difference(demo.Session.Book, demo.Session.Style));
    }

    private static string[] Page(HomeScreen screen, Size size) => [.. screen.Draw(size).Lines.SkipLast(1).Select(line => line.Text.TrimEnd()).TakeWhile(line => !line.Contains("The account over the next", StringComparison.Ordinal))];
}
