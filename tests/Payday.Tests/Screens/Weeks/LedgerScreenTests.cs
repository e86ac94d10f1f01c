using System.Drawing;
using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.CardPurchases;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Screens.Reviews;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens.Weeks;

/// <summary>The ledger by what was done: folded, unfolded, undone.</summary>
public sealed class LedgerScreenTests : IDisposable
{
    private readonly DemoBook demo = new(new LocalDate(2026, 3, 13));

    public LedgerScreenTests()
    {
        demo.CloseOne();
        foreach ((string pot, long amount, string what) in new[] { ("food", 1240L, "Corner shop"), ("food", 410L, "Bakery"), ("fares", 350L, "") })
        {
            demo.Session.Take(Purchasing.Enter(demo.Session.Book, new PurchaseEntry(demo.Session.Today, new PotId(pot), Money.FromMinorUnits(amount, demo.Household.Currency), what)).Value!);
        }

        demo.Session.Take(Purchasing.Undo(demo.Session.Book, 2, demo.Session.Today).Value!);
    }

    public void Dispose() => demo.Dispose();

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    public void Ledger_OfAWeek_IsAsRecorded(int width, int height) =>
        Golden.Equal($"ledger-week-{width}x{height}", new Hand(new LedgerScreen(demo.Session)).To("Bakery").Press("Enter").Shown(new Size(width, height)));

    // A number says nothing to who wrote it down as a fee, or moved it.
    [Fact]
    public void Rows_OfEntriesAndMoves_SayWhatTheyWere()
    {
        LocalDate day = demo.Session.Today;
        Money amount = Money.FromMinorUnits(450, demo.Household.Currency);
        demo.Session.Take(Entering.Enter(demo.Session.Book, new EntryWish(day, EntryKind.Fee, MoveEnds.Buffer, -amount, "ACCOUNT FEE")).Value!);
        demo.Session.Take(Moving.Enter(demo.Session.Book, new MoveEntry(day, MoveEnds.Buffer, LedgerEnd.InAccount(Purpose.Pot(new PotId("reserve"))), amount, "put by")).Value!);

        string[] shown = new Hand(new LedgerScreen(demo.Session)).Shown(new Size(120, 60));
        Assert.Contains(shown, line => line.Contains("ACCOUNT FEE", StringComparison.OrdinalIgnoreCase));
        Assert.Contains(shown, line => line.Contains("Moved, ", StringComparison.Ordinal) && line.Contains("Reserve: put by", StringComparison.Ordinal));
        Assert.DoesNotContain(shown, line => line.Contains("Account entry 1", StringComparison.Ordinal) || line.Contains("Move 1", StringComparison.Ordinal));
    }

    // Who writes something down late looks for it on its day, in the groups and in the list of lines.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Entry_WrittenLate_StandsOnItsDay(bool isList)
    {
        Money amount = Money.FromMinorUnits(450, demo.Household.Currency);
        demo.Session.Take(Entering.Enter(demo.Session.Book, new EntryWish(new LocalDate(2026, 3, 9), EntryKind.Fee, MoveEnds.Buffer, -amount, "late fee")).Value!);
        Hand hand = new(new LedgerScreen(demo.Session));
        if (isList)
        {
            hand.Press("d").Type("Mar 2026");
        }

        LocalDate[] days = [.. hand.Shown(new Size(120, 200)).Skip(1).Select(line => Regex.Match(line, "(\\d+) Mar")).Where(found => found.Success)
            .Select(found => new LocalDate(2026, 3, int.Parse(found.Groups[1].Value, CultureInfo.InvariantCulture)))];
        Assert.Contains(new LocalDate(2026, 3, 9), days);
        Assert.Equal(days.OrderDescending(), days);
    }

    [Fact]
    public void Enter_UnfoldsAndFolds()
    {
        Hand hand = new Hand(new LedgerScreen(demo.Session)).To("Payday of 6 Mar");
        string[] folded = hand.Shown(new Size(80, 60));
        hand.Press("Enter");
        Assert.Contains(hand.Shown(new Size(80, 60)), line => line.Contains("income: Odette, joinery -> account: left to place", StringComparison.Ordinal));
        Assert.Equal(folded, hand.Press("Enter").Shown(new Size(80, 60)));
    }

    [Fact]
    public void Undo_OfAGroup_LeadsToItsWhole()
    {
        Hand hand = new Hand(new LedgerScreen(demo.Session)).To("Corner shop").Press("u");
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("belongs to card purchase 1", StringComparison.Ordinal));
        hand.Press("Esc").To("Payday of 6 Mar").Press("u");
        Assert.StartsWith("Enter unfolds it", hand.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Filtered_IsAListOfMovements()
    {
        Hand hand = new(new LedgerScreen(demo.Session));
        hand.Press("o").To("Fares").Press("Enter");
        Assert.Equal("Ledger: Fares", hand.Top.Title);
        Assert.DoesNotContain(hand.Shown(new Size(80, 24)), line => line.Contains("Payday of", StringComparison.Ordinal));
    }
}
