using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CardPurchases;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.Debts;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.NotesAtHome;
using Payday.Core.Pots;
using Payday.Core.Routines;

namespace Payday.Core.Outlooks;

/// <summary>A book that is lived forward: a payday is closed, its money used up, and so on.</summary>
/// <param name="book">The book.</param>
/// <param name="first">The first payday to come.</param>
internal sealed class OutlookLife(Book book, LocalDate first)
{
    private readonly Dictionary<PotId, LocalDate> reached = Full(book, first).ToDictionary(pot => pot.Id, _ => LocalDate.MinIsoValue);
    private readonly HashSet<DebtId> alreadyEnded = [.. book.Household.Debts.Where(debt => !book.Ledger.Balances.OwedOn(debt.Id).IsPositive).Select(debt => debt.Id)];
    private readonly List<DebtPaidOff> ended = [];

    /// <summary>The book so far.</summary>
    public Book Book { get; private set; } = book;

    /// <summary>The paydays so far.</summary>
    public List<OutlookPayday> Paydays { get; } = [];

    /// <summary>Closes a payday and lives to its period's end.</summary>
    /// <returns>Whether it could be closed.</returns>
    public bool Live(RoutinePlan plan)
    {
        Result<Book> closed = Closing.Of(plan);
        if (closed.Ok)
        {
            Book = closed.Value;
            Note(plan.Period.First);
            UseUp(plan.Period.Last);

            // The next payday asks for them.
            _ = PotNotes.GoingOn(plan.Book, Book);
        }

        Paydays.Add(new OutlookPayday(
            plan.Period,
            plan.Income.Own,
            plan.Income.Buffer.Amount,
            plan.Bills.Total,
            plan.Debts.Total,
            plan.Pots.Total,
            plan.Surplus.Before,
            plan.Pots.Cut + plan.Bills.Lacking,
            Book.Ledger.Balances.In(Place.Account),
            Book.Ledger.Balances.In(Place.Cash))
        {
            ToOverdraft = plan.Income.Overdraft.Amount,
            Overdrawn = Book.Ledger.Balances.Overdrawn,
            Unpayable = plan.Unpayable,
            Faults = closed.Faults,
        });
        return closed.Ok;
    }

    /// <summary>What was seen.</summary>
    public Outlook Seen() => new(
        [.. Paydays],
        [.. Book.Household.Pots.Where(pot => reached.TryGetValue(pot.Id, out LocalDate on) && on > LocalDate.MinIsoValue)
            .Select(pot => new PotReached(pot.Id, pot.Name, reached[pot.Id])).OrderBy(pot => pot.On)],
        [.. ended],
        Book);

    /// <summary>Uses up what is used up by a day: full sinking pots on their date, then the spending pots.</summary>
    public void UseUp(LocalDate day)
    {
        BankHolidays holidays = Book.Household.Holidays;
        foreach ((Pot pot, LocalDate by) in Book.Household.Pots
            .Select(pot => (pot, By: ByOf(pot, holidays, day)))
            .Where(one => one.By <= day && PotMoney.InItsPlace(Book.Ledger.Balances, one.pot.Id) >= ((PotKind.Sinking)one.pot.Kind).TargetBy(one.By!.Value))
            .Select(one => (one.pot, one.By!.Value))
            .OrderBy(one => one.Item2))
        {
            Spend([pot], by);
        }

        Spend([.. Book.Household.Pots.Where(pot => pot.Kind is PotKind.Spending)], day);
    }

    // By card from the account, by a count that finds nothing left in cash. A day that a later count has seen already stays as it is.
    private void Spend(IReadOnlyCollection<Pot> pots, LocalDate day)
    {
        foreach (Pot pot in pots.Where(pot => pot.Place == Place.Account))
        {
            Money has = PotMoney.InItsPlace(Book.Ledger.Balances, pot.Id);
            if (has.IsPositive && Purchasing.Enter(Book, new PurchaseEntry(day, pot.Id, has, "")) is { Ok: true } bought)
            {
                Book = bought.Value;
            }
        }

        // The first plan says which entries can't be; as a rule all can, and it is confirmed as it is.
        var none = new CountEntry(Money.Zero(Book.Household.Currency)) { Then = CountThen.Stays };
        CountDraft draft = pots
            .Where(pot => pot.Place == Place.Cash && PotMoney.InCash(Book.Ledger.Balances, pot.Id).IsPositive)
            .Aggregate(new CountDraft(day), (all, pot) => all.With(pot.Id, none));
        if (draft.Entries.IsEmpty)
        {
            return;
        }

        CountPlan plan = CountPlan.OfEntered(Book, draft);
        ImmutableArray<PotId> refused = [.. plan.Rows.Where(row => row.Fault is not null).Select(row => row.Pot.Id)];
        if (!refused.IsEmpty)
        {
            plan = CountPlan.OfEntered(Book, draft with { Entries = draft.Entries.RemoveRange(refused) });
        }

        Book = plan.Confirm() is { Ok: true } confirmed ? confirmed.Value : Book;
    }

    private LocalDate? ByOf(Pot pot, BankHolidays holidays, LocalDate day) => pot.Kind is PotKind.Sinking kind
        && PotRecord.Sinking(Book, pot.Id, kind, holidays, day) is { Stage: SinkingStage.Saving } state
            ? state.By
            : null;

    // Noted before anything of the period is spent.
    private void Note(LocalDate payday)
    {
        foreach (Pot pot in Full(Book, payday))
        {
            reached.TryAdd(pot.Id, payday);
        }

        ended.AddRange(Book.Household.Debts
            .Where(debt => !Book.Ledger.Balances.OwedOn(debt.Id).IsPositive && alreadyEnded.Add(debt.Id))
            .Select(debt => new DebtPaidOff(debt.Id, debt.Name, payday)));
    }

    private static IEnumerable<Pot> Full(Book book, LocalDate payday) => book.Household.Pots.Where(pot => pot.Kind switch
    {
        PotKind.Sinking { Finished: false } or PotKind.Reserve => PotMoney.HasNow(book.Ledger.Balances, pot.Id) >= PotTarget.Of(book, pot, payday),
        PotKind.Ladder kind => LadderSteps.Done(kind, PutIn(book, pot)) == kind.Steps,
        _ => false,
    });

    private static Money PutIn(Book book, Pot pot)
    {
        Balances balances = book.Ledger.Balances;
        return PotMoney.HasNow(balances, pot.Id) + balances[LedgerEnd.SpentFrom(pot.Id)] + balances[LedgerEnd.MissedIn(pot.Id)];
    }
}
