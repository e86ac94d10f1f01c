using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Routines;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

public class RoutineDraftTests
{
    private static readonly RoutineDraft Nothing = new(Friday6March);

    private static readonly Dictionary<string, RoutineDraft> Decided = new()
    {
        [nameof(RoutineDraft.Incomes)] = Nothing with { Incomes = SourceSums(("wage", 900)) },
        [nameof(RoutineDraft.OneOffs)] = Nothing with { OneOffs = Sums(("Gift", 20)) },
        [nameof(RoutineDraft.Dues)] = Nothing with { Dues = Nothing.Dues.Add(new DueKey(new BillId("rent"), Friday6March), new DueDecision(Usd(5), null)) },
        [nameof(RoutineDraft.SetAsides)] = Nothing with { SetAsides = SetAsideMode.AsTheyFall },
        [nameof(RoutineDraft.DebtPayments)] = Nothing with { DebtPayments = DebtSums(("card", 30)) },
        [nameof(RoutineDraft.FromBuffer)] = Nothing with { FromBuffer = Usd(0) },
        [nameof(RoutineDraft.ToOverdraft)] = Nothing with { ToOverdraft = Usd(0) },
        [nameof(RoutineDraft.PaidMinimums)] = Nothing with { PaidMinimums = Nothing.PaidMinimums.Add(new DueKey(new DebtId("card"), Friday6March), true) },
        [nameof(RoutineDraft.Minimums)] = Nothing with { Minimums = Nothing.Minimums.Add(new DueKey(new DebtId("card"), Friday6March), Usd(30)) },
        [nameof(RoutineDraft.Fills)] = Nothing with { Fills = PotSums(("food", 30)) },
        [nameof(RoutineDraft.Placements)] = Nothing with { Placements = [] },
        [nameof(RoutineDraft.Notes)] = Nothing with { Notes = Nothing.Notes.Add(new PartKey(new PotId("food"), null), Notes.None) },
        [nameof(RoutineDraft.LeavesNotesAtHome)] = Nothing with { LeavesNotesAtHome = true },
        [nameof(RoutineDraft.UsesOwedBack)] = Nothing with { UsesOwedBack = true },
        [nameof(RoutineDraft.AsksATeller)] = Nothing with { AsksATeller = true },
        [nameof(RoutineDraft.Machine)] = Nothing with { Machine = new CashSource.Machine([Usd(20)], null) },
    };

    [Fact]
    public void HasDecisions_EachOneDecision_IsTrue() =>
        Assert.All(Decided, decided => Assert.True(decided.Value.HasDecisions, decided.Key));

    [Fact]
    public void HasDecisions_NothingOrALaterStep_IsFalse()
    {
        Assert.False(Nothing.HasDecisions);
        Assert.False((Nothing with { Step = RoutineStep.Pots }).HasDecisions);
    }

    [Fact]
    public void OpenDues_OfADueDecidedAndNotYetPaid_ComeToWhatWasDecided()
    {
        LocalDate tenth = new(2026, 3, 10);
        Household home = Bare with { Bills = [Bill("Rent", 300, tenth)] };
        RoutineDraft draft = Nothing with { Dues = Nothing.Dues.Add(new DueKey(new BillId("rent"), tenth), new DueDecision(Usd(315), null)) };
        Book closed = Closing.Of(Routine.Plan(Book.Begin(home), draft).Value!).Value!;

        Assert.Equal(
            [(tenth, Usd(315)), (tenth.PlusMonths(1), Usd(300))],
            OpenDues.OfBills(closed, BankHolidays.From(HolidayRules.None), tenth.PlusMonths(1)).Select(due => (due.Date, due.Amount)));
    }

    // A decision added later is missed by no one.
    [Fact]
    public void HasDecisions_EveryPropertyThatCanBeDecided_IsTriedHere() => Assert.Equal(
        typeof(RoutineDraft).GetProperties()
            .Where(property => property.CanWrite && property.Name is not (nameof(RoutineDraft.Payday) or nameof(RoutineDraft.Step)))
            .Select(property => property.Name)
            .Order(),
        Decided.Keys.Order());
}
