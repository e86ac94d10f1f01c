using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;

namespace Payday.Core.ClosedPaydays;

/// <summary>The movements of a routine, in the order of its steps.</summary>
internal sealed class ClosingMovements
{
    private static readonly LedgerEnd Unplaced = LedgerEnd.InAccount(Purpose.LeftToPlace);
    private readonly List<Movement> movements = [];
    private readonly LocalDate payday;
    private readonly LocalDate? lastPayday;

    private ClosingMovements(LocalDate payday, LocalDate? lastPayday) => (this.payday, this.lastPayday) = (payday, lastPayday);

    public static IReadOnlyList<Movement> Of(RoutinePlan plan)
    {
        var closing = new ClosingMovements(plan.Period.First, plan.Book.LastClosed?.Payday);
        closing.TakeIn(plan.Income);
        closing.HoldBack(plan.Bills);
        closing.PayDebts(plan.Debts);
        closing.Fill(plan.Pots);
        closing.Placed(plan);
        closing.Withdraw(plan.Book, plan.Withdrawal, ClosingTrips.Of(plan));
        return closing.movements;
    }

    private void TakeIn(IncomeStep income)
    {
        foreach (IncomeLine line in income.Lines)
        {
            Move(line.SourceId is { } source ? LedgerEnd.PaidBy(source) : LedgerEnd.OneOff(line.Name), Unplaced, line.Amount, "income");
        }

        Move(Unplaced, LedgerEnd.InAccount(Purpose.Overdraft), income.Overdraft.Amount, "pays off the overdraft");
        Move(LedgerEnd.InAccount(Purpose.Buffer), Unplaced, income.Buffer.Amount, "from the buffer");
    }

    private void HoldBack(BillsStep bills)
    {
        // What one bill gives up for another that is due sooner comes first, so that nothing is below zero in between.
        foreach (SetAsideLine line in bills.SetAsides.Where(line => line.SetAside.IsNegative))
        {
            Move(LedgerEnd.InAccount(Purpose.SetAside(line.BillId)), Unplaced, -line.SetAside, "set-aside moved to a bill due sooner");
        }

        foreach (SetAsideLine line in bills.SetAsides)
        {
            Move(Unplaced, LedgerEnd.InAccount(Purpose.SetAside(line.BillId)), line.SetAside, "set aside");
        }

        Dictionary<BillId, Money> held = bills.SetAsides.ToDictionary(line => line.BillId, line => line.HeldBefore);
        foreach (DueRow due in bills.Dues.Where(due => due.Paid))
        {
            Move(
                LedgerEnd.InAccount(Purpose.SetAside(due.BillId)),
                LedgerEnd.PaidFor(due.BillId),
                due.Amount,
                $"due {PlainDates.DayMonthYear(due.Date)}",
                PaidOn(due, held));
        }
    }

    // On its own day where the money was there by then; what only this payday brings can't have been paid before it.
    private LocalDate PaidOn(DueRow due, Dictionary<BillId, Money> held)
    {
        if (due.Date >= payday || due.Date < lastPayday || held[due.BillId] < due.Amount)
        {
            return payday;
        }

        held[due.BillId] -= due.Amount;
        return due.Date;
    }

    private void PayDebts(DebtsStep debts)
    {
        foreach (InterestCharge charge in debts.Charges)
        {
            Move(new LedgerEnd.Owed(charge.DebtId), LedgerEnd.InterestOn(charge.DebtId), charge.Amount, "a month's interest", charge.Date);
        }

        foreach (DebtCover cover in debts.Covers)
        {
            LedgerEnd waits = LedgerEnd.InAccount(Purpose.ForDebt(cover.DebtId));
            LedgerEnd bought = LedgerEnd.InAccount(Purpose.ForCard(cover.DebtId));
            Move(waits, Unplaced, -cover.Taken, "not needed for a minimum");
            Move(bought, Unplaced, cover.Freed, "not needed for the card");
            Move(Unplaced, waits, cover.Taken, "for a minimum");
            foreach (DebtRow row in debts.RowsOf(cover.DebtId).Where(row => row.Paid))
            {
                // One payment, of two purposes; where it is of one, it is none with the minimum before.
                Move(waits, new LedgerEnd.Owed(row.DebtId), row.Own, "minimum payment", row.PaidOn);
                Move(bought, new LedgerEnd.Owed(row.DebtId), row.Bought, row.Own.IsZero ? "card payment" : "minimum payment", row.PaidOn);
            }
        }
    }

    private void Fill(PotsStep pots)
    {
        foreach (PotRow row in pots.Rows)
        {
            Move(Unplaced, Entry(row.Pot), row.Fill, "fill");
        }
    }

    private void Placed(RoutinePlan plan)
    {
        foreach (Placement placement in plan.Surplus.Placements)
        {
            LedgerEnd target = placement.Target switch
            {
                MoveTarget.ToDebt to => new LedgerEnd.Owed(to.Id),
                MoveTarget.ToPot to => Entry(plan.Book.Household.Pots.Single(pot => pot.Id == to.Id)),
                MoveTarget.ToBill to => LedgerEnd.InAccount(Purpose.SetAside(to.Id)),
                _ => LedgerEnd.InAccount(Purpose.Buffer),
            };
            Move(Unplaced, target, placement.Amount, "surplus");
        }
    }

    // A reused note was loose money at home: it goes in the pot, and the account keeps its worth as buffer instead, or for the
    // pot whose loose note it was. Owed-back notes are settled as a return; see ReusedOwedBack.
    private void Withdraw(Book book, WithdrawalStep withdrawal, ImmutableArray<Money> trips)
    {
        var left = new Stack<Money>(trips.Reverse());
        ImmutableArray<NoteOrigins> origins = NoteOrigins.Of(withdrawal);
        Dictionary<PotId, Money> fromBuffer = UseLooseOfPots(book, origins);
        foreach (NoteOrigins notes in origins)
        {
            LedgerEnd waits = LedgerEnd.InAccount(Purpose.KeptBack(notes.PotId));
            LedgerEnd pot = LedgerEnd.InCash(Purpose.Pot(notes.PotId));
            Fetch(waits, pot, notes.Fetched.Worth(withdrawal.Plan.Currency), left);
            Move(LedgerEnd.InCash(Purpose.Buffer), pot, fromBuffer[notes.PotId], "notes on hand");
            Move(waits, LedgerEnd.InAccount(Purpose.Buffer), fromBuffer[notes.PotId], "notes on hand");
        }
    }

    // Each trip to a machine has movements of its own, as the bank shows it by itself. The last trips are at the bottom.
    private void Fetch(LedgerEnd waits, LedgerEnd pot, Money amount, Stack<Money> trips)
    {
        while (amount.IsPositive)
        {
            Money part = amount;
            if (trips.TryPop(out Money trip))
            {
                part = Money.Min(trip, amount);
                if (trip > part)
                {
                    trips.Push(trip - part);
                }
            }

            Move(waits, pot, part, "withdrawal");
            amount -= part;
        }
    }

    // Loose notes that are a pot's own are used before those of the buffer: first by that pot, then by others, who leave it
    // their money in the account.
    private Dictionary<PotId, Money> UseLooseOfPots(Book book, ImmutableArray<NoteOrigins> origins)
    {
        Currency currency = book.Household.Currency;
        Dictionary<PotId, Money> needs = origins.ToDictionary(pot => pot.PotId, pot => pot.Loose.Worth(currency));
        List<(PotId Pot, Money Over)> loose = [.. book.Household.Pots.Select(pot => (pot.Id, PotMoney.InLooseNotes(book.Ledger.Balances, pot.Id))).Where(pot => pot.Item2.IsPositive)];
        for (int i = 0; i < loose.Count; i++)
        {
            PotId own = loose[i].Pot;
            Money used = Money.Min(loose[i].Over, needs.GetValueOrDefault(own, Money.Zero(currency)));
            Move(LedgerEnd.InCash(Purpose.KeptBack(own)), LedgerEnd.InCash(Purpose.Pot(own)), used, "its loose notes");
            loose[i] = (own, loose[i].Over - used);
            needs[own] = needs.GetValueOrDefault(own, used) - used;
        }

        foreach (PotId pot in origins.Select(notes => notes.PotId))
        {
            for (int i = 0; i < loose.Count; i++)
            {
                Money used = Money.Min(loose[i].Over, needs[pot]);
                Move(LedgerEnd.InCash(Purpose.KeptBack(loose[i].Pot)), LedgerEnd.InCash(Purpose.Pot(pot)), used, "loose notes of another pot");
                Move(LedgerEnd.InAccount(Purpose.KeptBack(pot)), LedgerEnd.InAccount(Purpose.KeptBack(loose[i].Pot)), used, "loose notes of another pot");
                loose[i] = (loose[i].Pot, loose[i].Over - used);
                needs[pot] -= used;
            }
        }

        return needs;
    }

    // A cash pot's money waits in the account until its notes are fetched; what no note makes stays there.
    private static LedgerEnd Entry(Pot pot) => pot.Place == Place.Cash
        ? LedgerEnd.InAccount(Purpose.KeptBack(pot.Id))
        : LedgerEnd.InAccount(Purpose.Pot(pot.Id));

    private void Move(LedgerEnd from, LedgerEnd to, Money amount, string reason, LocalDate? date = null)
    {
        if (amount.IsPositive)
        {
            movements.Add(new Movement(0, date ?? payday, from, to, amount, reason, payday));
        }
    }
}
