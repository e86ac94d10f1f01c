using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

/// <summary>A payday that falls short: the buffer helps first, as far as the household said, and else the person is asked.</summary>
public class BufferHelpTests
{
    private static readonly Household Tight = Asking(Bare with
    {
        Bills = [Bill("Rent", 900, new(2026, 3, 3), essential: true)],
        Sources = [Bare.Sources[0] with { Expected = Usd(600) }],
        Start = new(2026, 3, 1),
        Opening = Bare.Opening with { Account = Usd(4000) },
    });

    [Fact]
    public void Of_ShortAndNothingSaid_IsNotClosedAndAsks()
    {
        RoutinePlan plan = Plan(Tight);

        Assert.Equal((Usd(300), Usd(4000), Usd(0), true), (plan.Income.Buffer.Short, plan.Income.Buffer.Has, plan.Income.Buffer.Amount, plan.Income.Buffer.IsAsked));
        Assert.Equal(
            "The payday is 300.00 short, and the buffer has 4,000.00: say in the Income step what it gives; "
            + "0 gives nothing. Without it: Rent can't be paid in full: 300.00 short by 3 Mar 2026.",
            Closing.Of(plan).Faults.Said());
    }

    [Fact]
    public void Of_TheBufferGives_PaysOnThePaydayAndLeavesNothingBelowZero()
    {
        Book book = Closing.Of(Plan(Tight, draft => draft with { FromBuffer = Usd(300) })).Value!;

        Movement paid = Assert.Single(book.Ledger.Movements, movement => movement.To is LedgerEnd.Outside { Kind: OutsideKind.Bill });
        Assert.Equal((Friday6March, Usd(900)), (paid.Date, paid.Amount));
        Assert.Equal(Usd(3700), book.Ledger.Balances[LedgerEnd.InAccount(Purpose.Buffer)]);
        Assert.Empty(LedgerCheck.Faults(book.Ledger.Balances));
    }

    [Fact]
    public void Of_TheBufferGaveAndThePaydayIsReopened_HasItBackAndGivesTheSameAgain()
    {
        RoutinePlan plan = Plan(Tight, draft => draft with { FromBuffer = Usd(300) });
        Book closed = Closing.Of(plan).Value!;

        Book reopened = Reopening.Of(closed, Friday6March.PlusDays(3)).Value!;
        Book again = Closing.Of(Routine.Plan(reopened, reopened.Draft!).Value!).Value!;

        Assert.Equal(plan.Book.Ledger.Balances.All.ToHashSet(), reopened.Ledger.Balances.All.ToHashSet());
        Assert.Equal(closed.Ledger.Balances.All.ToHashSet(), again.Ledger.Balances.All.ToHashSet());
    }

    [Theory]
    [InlineData(3900, 100, "Rent can't be paid in full: 200.00 short by 3 Mar 2026.")]
    [InlineData(3000, 300, null)]
    [InlineData(5000, 0, "Rent can't be paid in full: 300.00 short by 3 Mar 2026.")]
    public void Of_TheHouseholdSaysWhatItKeeps_HelpsDownToThat(decimal keeps, decimal gives, string? fault)
    {
        RoutinePlan plan = Plan(Tight with { Settings = Tight.Settings with { BufferKeeps = Usd(keeps) } });

        Assert.Equal(Usd(gives), plan.Income.Buffer.Amount);
        Assert.Equal(fault, Closing.Of(plan).Faults.Said());
    }

    [Fact]
    public void Of_MoreThanTheBufferHas_IsRefused() =>
        Assert.Contains(
            "The buffer has 4,000.00, so it can't give 4,001.00.",
            Closing.Of(Plan(Tight, draft => draft with { FromBuffer = Usd(4001) })).Faults.Said(),
            StringComparison.Ordinal);

    [Fact]
    public void Plan_PotsWouldBeCut_TheBufferComesFirst()
    {
        Household home = Bare with
        {
            Settings = Bare.Settings with { BufferKeeps = Usd(420) },
            Pots = [CashPot("Food", 500, rank: 1, floor: 300), CashPot("Treats", 100, rank: 2)],
        };

        // 1,200 wanted, 1,000 there: 80 from the buffer, and Treats give the other 120.
        RoutinePlan plan = Plan(home);

        Assert.Equal((Usd(80), Usd(120)), (plan.Income.Buffer.Amount, plan.Pots.Cut));
    }

    [Fact]
    public void Plan_WithoutAShortfall_TakesOnlyWhatThePersonSays()
    {
        Household home = Bare with { Settings = Bare.Settings with { BufferKeeps = Usd(0) } };

        Assert.Equal(Usd(0), Plan(home).Income.Buffer.Amount);
        Assert.Equal(Usd(1050), Plan(home, draft => draft with { FromBuffer = Usd(50) }).Income.ToPlace);
    }

    // Rent of 150 due in the period of a pay of 100: once closed as "all placed".
    [Fact]
    public void Of_PayBelowARentThatIsDue_IsShortByAllThatIsMissing()
    {
        RoutinePlan plan = Plan(Bare with
        {
            Bills = [Bill("Rent", 150, new(2026, 3, 10))],
            Pots = [CashPot("Food", 100, floor: 100)],
            Sources = [Bare.Sources[0] with { Expected = Usd(100) }],
        });

        Assert.Equal(Usd(-150), plan.LeftToPlace);
        Assert.Equal([("Rent", Usd(150))], plan.Unpayable.Select(one => (one.Obligation.Name, one.Short)));
        Assert.False(Closing.Of(plan).Ok);
    }

    private static Household Asking(Household home) => home with { Settings = home.Settings with { BufferKeeps = null } };

    private static RoutinePlan Plan(Household home, Func<RoutineDraft, RoutineDraft>? decide = null) =>
        Routine.Plan(Book.Begin(home), (decide ?? (same => same))(new RoutineDraft(Friday6March))).Value!;
}
