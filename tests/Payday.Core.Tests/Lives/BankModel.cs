using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;

namespace Payday.Core.Tests.Lives;

/// <summary>A bank of our own, that knows nothing of the ledger: it sees what is paid in, paid out, fetched and brought, a line each.</summary>
internal sealed class BankModel(Book begun)
{
    private readonly Household household = begun.Household;
    private readonly Dictionary<string, BankLine[]> lines = [];
    private Book seen = begun;

    /// <summary>What the bank has once all on its way has arrived.</summary>
    public Money Balance => household.Opening.Account + Money.Sum(Amounts, household.Currency);

    /// <summary>The amounts of its lines, rising.</summary>
    public IEnumerable<Money> Amounts => Lines.Select(line => line.Amount).OrderBy(amount => amount.MinorUnits);

    /// <summary>Its lines, each on the day on which it happened.</summary>
    public IEnumerable<BankLine> Lines => lines.Values.SelectMany(its => its).Where(line => !line.Amount.IsZero);

    /// <summary>Sees what became of the book by one event.</summary>
    public void See(Book now)
    {
        foreach (ClosedPayday payday in now.Closed.Skip(seen.Closed.Length))
        {
            lines[$"payday {payday.Payday}"] = [.. LinesOf(Routine.Plan(seen, payday.Draft).Value!)];
        }

        foreach (ClosedPayday payday in seen.Closed.Skip(now.Closed.Length))
        {
            lines.Remove($"payday {payday.Payday}");
            lines.Remove($"fetched {payday.Payday}");
        }

        // What the bank really gave, where that isn't what the slip asked for.
        foreach (ClosedPayday payday in now.Closed)
        {
            Core.Cash.Notes given = now.Weeks.StandingReceived.LastOrDefault(received => received.Payday == payday.Payday)?.Got ?? payday.Withdraw;
            lines[$"fetched {payday.Payday}"] = [.. Visits(payday, given.Worth(household.Currency)).Select((visit, i) => new BankLine(payday.Payday.PlusDays(i), -visit, "CASH 0815"))];
        }

        // One over several pots is one line; a card that is a debt pays none.
        foreach (IGrouping<long, CardPurchase> whole in now.Weeks.Purchases.GroupBy(purchase => purchase.Whole ?? purchase.Number))
        {
            CardPurchase[] paid = [.. whole.Where(part => !part.Undone && part.Card is null)];
            lines[$"purchase {whole.Key}"] = paid.Length == 0 ? [] : [new(paid[0].Date, -Money.Sum(paid.Select(part => part.Amount), household.Currency), $"CARD 4711 {paid[0].What}")];
        }

        foreach (Move move in now.Weeks.Moves)
        {
            // Cash that goes to a purpose in the account is brought by a cash return, but loose notes are brought at once.
            bool fromAccount = move.From is LedgerEnd.At { Place: Place.Account };
            bool toCash = move.To is LedgerEnd.At { Place: Place.Cash };
            bool fetched = fromAccount && toCash && (move.Notes is not null || move.To is LedgerEnd.At { Purpose.Kind: PurposeKind.Buffer });
            bool brought = move.From is LedgerEnd.At { Place: Place.Cash, Purpose.Kind: PurposeKind.Buffer } && !toCash;
            lines[$"move {move.Number}"] = move.Undone ? []
                : fromAccount && (move.To is LedgerEnd.Owed || fetched) ? [new(move.Date, -move.Amount, fetched ? "CASH 0815" : Name(move.To))]
                : brought ? move.To is LedgerEnd.Owed ? [new(move.Date, move.Amount, "DEPOSIT"), new(move.Date, -move.Amount, Name(move.To))] : [new(move.Date, move.Amount, "DEPOSIT")]
                : [];
        }

        foreach (AccountEntry entry in now.Weeks.Entries)
        {
            // What a lender charges never passes the account, nor do gifts and losses of cash; for a cash pot the account may hold it until the next fill.
            // Loose notes that were counted as they should be move nothing.
            bool passes = entry.FirstMovement <= entry.LastMovement && new[] { now.Ledger.Movements[(int)entry.FirstMovement - 1].From, now.Ledger.Movements[(int)entry.FirstMovement - 1].To }.Any(end => end is LedgerEnd.At { Place: Place.Account });
            lines[$"entry {entry.Number}"] = entry.Undone || !passes ? [] : [new(entry.Date, entry.Amount, entry.What)];
        }

        foreach (DuePayment payment in now.Weeks.Payments)
        {
            lines[$"payment {payment.Number}"] = payment.Undone ? [] : [new(payment.Date, -payment.Amount, Name(payment.Key.Owner))];
        }

        foreach (CashReturn back in now.Weeks.Returns)
        {
            if (back.Number > seen.Weeks.Returns.Length)
            {
                // What was promised to a debt is paid on it once it is there, as far as the debt asks for it.
                IEnumerable<BankLine> debts = back.Payday is null ? now.Household.Debts.SelectMany(debt => Payments(now, back, debt.Id, seen.Ledger.Balances.OwedOn(debt.Id))) : [];
                lines[$"return {back.Number}"] = back.Payday is null ? [new(back.Date, Money.Sum(back.Pots.Select(pot => pot.Amount), now.Household.Currency), "DEPOSIT"), .. debts] : [];
                if (back.Payday is { } payday)
                {
                    // A payday that used its notes: the account's own money pays the debt.
                    lines[$"payday {payday}"] = [.. lines[$"payday {payday}"], .. now.Household.Debts.SelectMany(debt => Payments(now, back, debt.Id, OwedAfter(now, debt.Id, back)))];
                }
            }

            if (back.Undone)
            {
                lines[$"return {back.Number}"] = [];
            }
        }

        seen = now;
    }

    // A teller gives all at once; a machine so much a day, the largest notes first. What it gave beyond the slip came last, and so did what it gave less.
    private List<Money> Visits(ClosedPayday payday, Money given)
    {
        List<Money> visits = [];
        if (payday.Draft.BankFor(household.Settings.Bank) is Core.Cash.CashSource.Machine { Limit: { } limit })
        {
            List<long> notes = [.. payday.Withdraw.SelectMany(note => Enumerable.Repeat(note.Key, note.Value)).OrderDescending()];
            while (notes.Count > 0)
            {
                long bag = 0;
                foreach (long note in notes.ToArray())
                {
                    if (bag + note <= limit.MinorUnits)
                    {
                        bag += note;
                        notes.Remove(note);
                    }
                }

                visits.Add(Money.FromMinorUnits(bag, household.Currency));
            }
        }

        Money more = given - Money.Sum(visits, household.Currency);
        if (visits.Count == 0)
        {
            return [given];
        }

        visits[^1] += more;
        while (visits.Count > 1 && !visits[^1].IsPositive)
        {
            visits[^2] += visits[^1];
            visits.RemoveAt(visits.Count - 1);
        }

        return visits;
    }

    // The last thing a payday writes, so what it owes then and what was paid last is what it owed before.
    private static Money OwedAfter(Book now, DebtId debt, CashReturn back) =>
        now.Ledger.Balances.OwedOn(debt) + Money.Sum(
            now.Ledger.Movements.Where(movement => movement.Number >= back.FirstMovement && movement.To is LedgerEnd.Owed owed && owed.DebtId == debt).Select(movement => movement.Amount),
            now.Household.Currency);

    private static IEnumerable<BankLine> Payments(Book now, CashReturn back, DebtId debt, Money owed)
    {
        foreach (SettledItem item in back.Settles.Where(item =>
            (item.Item.Kind == OwedKind.MovesOn && now.Weeks.Counts[(int)item.Item.Number - 1].MovesOnTo == MoveTarget.Debt(debt))
            || (item.Item.Kind == OwedKind.Move && now.Weeks.Moves[(int)item.Item.Number - 1].To == new LedgerEnd.Owed(debt))))
        {
            Money paid = Money.Min(item.Amount, owed.ClampToZero());
            owed -= paid;
            yield return new(back.Date, -paid, Name(new LedgerEnd.Owed(debt)));
        }
    }

    private static IEnumerable<BankLine> LinesOf(RoutinePlan plan) =>
    [
        .. plan.Income.Lines.Select(line => new BankLine(plan.Payday.Date, line.Amount, line.Name)),
        .. plan.Bills.Dues.Where(due => due.Paid).Select(due => new BankLine(due.Date, -due.Amount, due.Name)),
        .. plan.Debts.Rows.Where(row => row.Paid).Select(row => new BankLine(row.PaidOn ?? plan.Payday.Date, -row.Payment, row.Name)),
        .. plan.Surplus.Placements.Where(placement => placement.Target is MoveTarget.ToDebt).Select(placement => new BankLine(plan.Payday.Date, -placement.Amount, ((MoveTarget.ToDebt)placement.Target).Id.Text)),
    ];

    private static string Name(LedgerEnd end) => end is LedgerEnd.Owed owed ? owed.DebtId.Text : "";

    private static string Name(DueOwner owner) => owner.Bill?.Text ?? owner.Debt!.Value.Text;
}
