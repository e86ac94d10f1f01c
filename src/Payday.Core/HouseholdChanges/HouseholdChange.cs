using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Debts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;

namespace Payday.Core.HouseholdChanges;

/// <summary>Putting a household in the place of another in a book that goes on.</summary>
public static class HouseholdChange
{
    /// <summary>Puts another household in the book.</summary>
    /// <param name="book">The book as it is.</param>
    /// <param name="next">The household to put in.</param>
    /// <returns>The book afterwards; or each <see cref="ChangeFault"/> that is in the way.</returns>
    /// <remarks>
    /// Until a payday is closed or a pot counted or bought from everything but the currency may change, and the opening balances are undone and
    /// written anew. From then on they are history: start and opening stay, and nothing that still holds money or is
    /// owed may go. A debt may come with what is owed on it.
    /// A draft keeps what was decided about things that are still there; one of a date that the changed schedules no
    /// longer pay on could never be closed, and goes.
    /// </remarks>
    public static Result<Book> Of(Book book, Household next)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(next);
        if (book.Household.Currency != next.Currency)
        {
            return Result.Refused<Book>(new ChangeFault.OtherCurrency(book.Household.Currency, next.Currency));
        }

        ImmutableArray<ChangeFault> refusals = book.HasHistory ? [.. AgainstHistory(book, next)] : [];
        if (!refusals.IsEmpty)
        {
            return Result.Refused<Book>([.. refusals]);
        }

        next = SinkingAnswers.Settled(book, next);
        Ledger ledger = book.Ledger.Add(book.HasHistory ? NewDebts(book, next) : Reopened(book, next));
        Book changed = book with { Household = next, Ledger = ledger, Draft = null, Weeks = book.Weeks.Fitting(next) };
        return Result.Of(changed with { Draft = Kept(changed, book.Draft) });
    }

    private static RoutineDraft? Kept(Book book, RoutineDraft? draft) =>
        draft is not null && DraftFit.To(book.Household, draft) is var fitting && Routine.Plan(book, fitting).Map(plan => plan.Foreseen()).Ok ? fitting : null;

    private static IEnumerable<Movement> Reopened(Book book, Household next)
    {
        Movement[] wanted = [.. Opening.Movements(next)];
        Movement[] standing = [.. book.Ledger.Standing];
        return standing.Select(movement => movement with { Number = 0 }).SequenceEqual(wanted)
            ? []
            : [.. book.Ledger.Reverse(standing.Select(movement => movement.Number), next.Start, "opening balances corrected").Value, .. wanted];
    }

    private static IEnumerable<Movement> NewDebts(Book book, Household next) => next.Debts
        .Where(debt => debt.Opening.IsPositive && book.Household.Debts.All(known => known.Id != debt.Id))
        .Select(debt => Opening.Owe(next, debt));

    private static IEnumerable<ChangeFault> AgainstHistory(Book book, Household next)
    {
        Household old = book.Household;
        if (old.Start != next.Start)
        {
            yield return new ChangeFault.OtherStart(old.Start);
        }

        bool openingChanged = old.Opening.Account != next.Opening.Account
            || !old.Opening.SetAside.SequenceEqual(next.Opening.SetAside)
            || !old.Opening.Pots.SequenceEqual(next.Opening.Pots)
            || !old.Opening.LooseNotes.SequenceEqual(next.Opening.LooseNotes)
            || next.Debts.Any(debt => old.Debts.Any(known => known.Id == debt.Id && known.Opening != debt.Opening));
        if (openingChanged)
        {
            yield return new ChangeFault.OtherOpening();
        }

        Balances balances = book.Ledger.Balances;
        foreach (Debt debt in old.Debts.Where(debt => next.Debts.All(kept => kept.Id != debt.Id) && !balances.OwedOn(debt.Id).IsZero))
        {
            yield return new ChangeFault.DebtOwed(debt.Id, debt.Name, balances.OwedOn(debt.Id));
        }

        foreach (Debt debt in old.Debts.Where(debt => next.Debts.All(kept => kept.Id != debt.Id)))
        {
            Money held = balances[LedgerEnd.InAccount(Purpose.ForDebt(debt.Id))] + balances[LedgerEnd.InAccount(Purpose.ForCard(debt.Id))];
            if (!held.IsZero)
            {
                yield return new ChangeFault.DebtHeld(debt.Id, debt.Name, held);
            }
        }

        foreach ((BillId id, string name) in old.Bills.Where(bill => next.Bills.All(kept => kept.Id != bill.Id)).Select(bill => (bill.Id, bill.Name)))
        {
            Money held = balances[LedgerEnd.InAccount(Purpose.SetAside(id))];
            if (!held.IsZero)
            {
                yield return new ChangeFault.BillHeld(id, name, held);
            }
        }

        foreach (Pot pot in old.Pots)
        {
            Pot? kept = next.Pots.FirstOrDefault(candidate => candidate.Id == pot.Id);
            Money has = PotMoney.HasNow(balances, pot.Id);
            if (!has.IsZero && kept?.Place != pot.Place)
            {
                yield return new ChangeFault.PotHas(pot.Id, pot.Name, has);
            }

            Money owed = PotMoney.OwedBack(balances, pot.Id);
            if (owed.IsPositive && kept is null)
            {
                yield return new ChangeFault.PotOwes(pot.Id, pot.Name, owed);
            }
        }

        foreach (OwedItem item in OwedItems.Of(book).Where(item => item.Target is { } target && target.NameIn(next) is null))
        {
            yield return new ChangeFault.OnItsWay(item.Target!.IdText, item.Target.NameIn(old)!, item.Left);
        }

        foreach (OwedItem item in OwedItems.Of(book).Where(item => item.To is { } to && !LedgerEnds.IsOf(next, to)))
        {
            string id = item.To switch
            {
                LedgerEnd.Owed owed => owed.DebtId.Text,
                LedgerEnd.At { Purpose.BillId: { } bill } => bill.Text,
                LedgerEnd.At { Purpose.PotId: { } pot } => pot.Text,
                LedgerEnd.At { Purpose.DebtId: { } debt } => debt.Text,
                _ => throw new InvalidOperationException("The buffer never goes."),
            };
            yield return new ChangeFault.OnItsWay(id, LedgerEnds.NameIn(old, item.To!) ?? id, item.Left);
        }
    }
}
