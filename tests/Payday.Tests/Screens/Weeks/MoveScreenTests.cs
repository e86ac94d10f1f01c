using System.Drawing;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Screens.Entries;
using Payday.Screens.Home;
using Payday.Screens.Moves;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Screens.Weeks;

/// <summary>Money moved, and what came in or went out, on the screens of the demo household after its payday of 6 March was closed.</summary>
public sealed class MoveScreenTests : IDisposable
{
    private static readonly Size Complete = new(80, 24);
    private readonly DemoBook demo = new(new LocalDate(2026, 3, 10));

    public MoveScreenTests() => demo.CloseOne();

    public void Dispose() => demo.Dispose();

    // An emergency on a Tuesday: the effect is there before it is written, and undone it is as if it had not been.
    [Fact]
    public void Move_FromTheReserve_ShowsBothBalancesAndIsWritten()
    {
        Balances before = demo.Session.Book.Ledger.Balances;
        Hand hand = new Hand(new HomeScreen(demo.Session)).Press("t", "a").Pick("r").To("To").Press("Enter").To("Car repairs").Press("Enter").To("Amount").Type("300", "clutch");

        Assert.Contains(hand.Shown(Complete), line => line.Contains("Then: Reserve 635.20 (now 935.20); Car repairs 411.70 (now 111.70).", StringComparison.Ordinal));
        Assert.Contains(hand.Shown(Complete), line => line.Contains("Nothing to fetch or take to the bank.", StringComparison.Ordinal));
        Assert.Equal(before, demo.Stored.Ledger.Balances, (left, right) => left.All.OrderBy(pair => pair.Key.Key).SequenceEqual(right.All.OrderBy(pair => pair.Key.Key)));
        hand.Press("Right");
        Move move = Assert.Single(demo.Stored.Weeks.Moves);
        Assert.Equal((30_000, "clutch"), (move.Amount.MinorUnits, move.Why));
        Assert.Empty(demo.Stored.Weeks.Forms);
        hand.Press("u", "Enter");
        Assert.Equal(before.All.OrderBy(pair => pair.Key.Key), demo.Stored.Ledger.Balances.All.OrderBy(pair => pair.Key.Key));
    }

    [Fact]
    public void Move_WithSomethingMissing_SaysWhatAndGoesThere()
    {
        Hand hand = new Hand(new MoveScreen(demo.Session)).Press("Right");
        Assert.Equal("Pick what gives the money first.", hand.Message);
        hand.To("From").Pick("r").Press("Right");
        Assert.Equal("Pick what gets it first.", hand.Message);
        hand.To("To").Pick("f").Press("Right");
        Assert.Equal("Type how much first.", hand.Message);
        hand.To("Amount").Type("9000").Press("Right");
        Assert.Equal("Reserve has 935.20, less than 9,000.00; write that much at most.", hand.Message);
        Assert.Empty(demo.Stored.Weeks.Moves);
    }

    // From the account to cash it waits for the next withdrawal, unless notes are named.
    [Fact]
    public void Move_ToACashPot_IsFetchedByTheNotes()
    {
        Hand hand = new Hand(new MoveScreen(demo.Session)).Pick("r").To("To").Pick("f").To("Amount").Type("40");
        Assert.Contains(hand.Shown(Complete), line => line.Contains("40.00 waits in the account, not in notes yet", StringComparison.Ordinal));
        hand.To("Notes").Press("Enter").To(" 20 ").Type("2").Press("Right");
        Assert.Contains(hand.Shown(Complete), line => line.Contains("Fetched from the bank: 2 x 20.", StringComparison.Ordinal));
        hand.Press("Right");
        Assert.Equal(4000, demo.Stored.Weeks.Moves[0].Notes!.Worth(demo.Household.Currency).MinorUnits);
    }

    // A terminal that goes leaves the form as it stood.
    [Fact]
    public void Entry_HalfTyped_IsThereAgainAndIsWritten()
    {
        new Hand(new EntryScreen(demo.Session)).Pick("w").To("Amount").Type("12.50");
        Assert.Equal("12.50", demo.Stored.Weeks.FormOf("entry")!.Texts["amount"]);
        Hand hand = new Hand(new HomeScreen(demo.Session)).Press("$", "a").To("For").Pick("b").Pick("b").To("What").Type("account fee");
        Assert.Contains(hand.Shown(Complete), line => line.Contains("Buffer", StringComparison.Ordinal));
        Assert.Contains(hand.Shown(Complete), line => line.Contains("Kind", StringComparison.Ordinal) && line.Contains("fee", StringComparison.Ordinal));
        hand.Press("Right");
        AccountEntry entry = Assert.Single(demo.Stored.Weeks.Entries);
        Assert.Equal((EntryKind.Fee, -1250, "account fee"), (entry.Kind, entry.Amount.MinorUnits, entry.What));
        hand.Press("u", "Enter");
        Assert.True(Assert.Single(demo.Stored.Weeks.Entries).Undone);
    }

    [Fact]
    public void Entry_LooseNotesCounted_StandAsTheyWereFound()
    {
        Hand hand = new Hand(new EntryScreen(demo.Session)).Pick("l").To("Notes").Press("Enter").To(" 20 ").Type("2").Press("Right").To("What").Type("found in a drawer").Press("Right");
        Assert.Equal("", hand.Message);
        Assert.Equal(4000, demo.Stored.Weeks.Entries[0].Counted!.Worth(demo.Household.Currency).MinorUnits);
    }
}
