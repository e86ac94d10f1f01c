using System.Text;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.Counts;
using Payday.Core.Debts;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Histories;
using Payday.Core.HouseholdChanges;
using Payday.Core.Ledgers;
using Payday.Core.NotesAtHome;
using Payday.Core.Pots;
using Payday.Core.Reconciling;
using Payday.Core.Routines;
using Payday.Core.StatementTaking;
using Payday.Core.Status;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Lives;

/// <summary>All that a book answers, for every date: as text, so that two books can be held against each other.</summary>
/// <remarks>Numbers of movements and records are left out: what is entered again has others.</remarks>
internal sealed class Answers
{
    private readonly Book book;
    private readonly StringBuilder text = new();

    private Answers(Book book) => this.book = book;

    public static string Of(Book book, LocalDate from, LocalDate to)
    {
        var answers = new Answers(book);
        for (LocalDate day = from; day <= to; day = day.PlusDays(1))
        {
            answers.Day(day);
        }

        answers.Now(from, to);
        return answers.text.ToString();
    }

    /// <summary>The same book with every movement that was undone, and what undid it, put in the place of something that no rule looks at.</summary>
    public static Book Without(Book book)
    {
        var nothing = new LedgerEnd.Outside(OutsideKind.Opening, "undone");
        var undoing = new LedgerEnd.Outside(OutsideKind.Opening, "undoing");
        HashSet<long> undone = [.. book.Ledger.Movements.Select(movement => movement.Reverses).OfType<long>()];
        Movement[] cleared =
        [
            .. book.Ledger.Movements.Select(movement => movement.Reverses is not null || undone.Contains(movement.Number)
                ? new Movement(movement.Number, book.Household.Start, nothing, undoing, movement.Amount, "")
                : movement),
        ];
        return book with { Ledger = Ledger.Of(book.Household.Currency, cleared) };
    }

    private void Day(LocalDate day)
    {
        Say($"on {day}");
        foreach (LedgerEnd end in Ends())
        {
            Say($"{end.Key} {Money.Sum(book.Ledger.Of(end).Where(movement => movement.Date <= day).Select(movement => movement.To == end ? movement.Amount : -movement.Amount), Dollars)}");
        }

        foreach (CountRow row in CountPlan.Of(book, book.Household.Pots.Where(pot => pot.Place == Place.Cash)
            .Aggregate(new CountDraft(day), (draft, pot) => draft.With(pot.Id, new CountEntry(Usd(0))))).Rows)
        {
            Say($"count {row.Pot.Id} {row.Since} {row.Before} {row.Filled} {row.OwedBack} {row.Moved} {row.StillOwed} {row.Spent} {row.Fault}");
        }

        Say($"{BookStatus.Of(book, day)} {CountWeeks.DayFor(book, day)}");
        foreach (OpenWeek week in CountWeeks.Open(book, day))
        {
            Say($"open {week.Week} {string.Join(' ', week.PotIds)}");
        }

        foreach (FillPart part in WalletFills.Waiting(book, day))
        {
            Say($"waits {part.Key} {part.Amount} {part.Moves}");
        }
    }

    private void Now(LocalDate from, LocalDate to)
    {
        foreach (FillPart part in FillPart.Of(book))
        {
            Say($"part {part.Key} {part.Amount} {part.Moves} {part.Marked?.State} {part.Marked?.Date} {part.Marked?.Amount}");
        }

        foreach (OwedItem item in OwedItems.Of(book))
        {
            Say($"owed {item.Key.Kind} {item.PotId} {item.Date} {item.What} {item.Amount} {item.Left} {item.Short} {item.Target}");
        }

        foreach (ReturnLine line in ReturnPlan.Of(book, ReturnDraft.AsPlanned).Lines)
        {
            Say($"return {line.Pot.Id} {line.Owes} {line.Way} {Listed(line.Notes)} {line.Swap?.With} {line.Goes}");
        }

        ReconciliationPlan bank = ReconciliationPlan.Of(book, new ReconciliationDraft(to, null, []));
        Say($"bank {bank.Here} {bank.OnItsWay} {bank.Expected}");
        foreach (AccountLine line in bank.Lines.OrderBy(line => line.Date).ThenBy(line => line.Amount.MinorUnits).ThenBy(line => line.What, StringComparer.Ordinal))
        {
            Say($"line {line.Date} {line.Amount} {line.Kind} {line.Other.Key} {line.What} {line.Cheque}");
        }

        foreach (TakenLine line in TakenLines.Of(book))
        {
            Say($"taken {line.Date} {line.Amount} {line.Text} {line.IsLeft}");
        }

        PotNotes notes = PotNotes.Of(book);
        Say($"loose {Listed(notes.Loose)}");
        foreach (Pot pot in book.Household.Pots)
        {
            Say($"notes {pot.Id} {Listed(notes.AtHome(pot.Id))} {Listed(notes.InWallet(pot.Id))} {PotNotes.AreSeen(book, pot)}");
            PotHistory history = PotHistory.Of(book, pot.Id);
            Say($"history {pot.Id} {history.Weeks} {history.SpentAWeek} {string.Join("; ", history.Spending)}");
            history.Lines.ToList().ForEach(line => Say($"  {line}"));
        }

        foreach (WeekCount count in book.Weeks.StandingCounts)
        {
            Say($"counted {count.PotId} {count.Date} {count.Before} {count.Filled} {count.OwedBack} {count.Moved} {count.Left} {count.Spent} {count.Difference} {count.Stayed}");
        }

        foreach (CardPurchase purchase in book.Weeks.StandingPurchases.OrderBy(purchase => purchase.Date).ThenBy(purchase => purchase.PotId).ThenBy(purchase => purchase.Amount.MinorUnits))
        {
            Say($"bought {purchase.Date} {purchase.PotId} {purchase.Amount} {purchase.OwedBack}");
        }

        DueLines.Of(book, to.PlusMonths(2)).ToList().ForEach(line => Say($"{line}"));
        ComingDues.Between(book, from, to.PlusMonths(2)).ToList().ForEach(due => Say($"{due}"));
        DebtOutlook outlook = DebtOutlook.Of(book, to);
        Say($"{outlook.From} {string.Join("; ", outlook.Debts.Select(debt => $"{debt with { PaidAhead = [] }} {string.Join(' ', debt.PaidAhead)}"))}");
        PotPlan.Of(book).ToList().ForEach(plan => Say($"{plan.Pot.Id} {plan.Has} {plan.Planned} {plan.Lacks} {plan.Done}"));
        Debts(to);
        Months(from, to);
        Differences.Open(book).ToList().ForEach(open => Say($"open {open.PotId} {open.Date} {open.Difference} {open.DifferenceName}"));
        for (int year = from.Year; year <= to.Year; year++)
        {
            MonthSummary.OfYear(book.Ledger, year, book.Household.Start, to, Roundings.Of(book)).ToList().ForEach(month => Say($"{month}"));
        }

        Say($"{book.HasHistory} {book.OpenFrom} {book.Closed.Length} {PotGuess.For(book, "shop")?.PotId}");
        HouseholdChange.Of(book, book.Household with { Pots = [], Debts = [], Start = book.Household.Start.PlusDays(1) }).Faults.ToList().ForEach(refusal => Say($"{refusal}"));
        Routine();
    }

    private void Debts(LocalDate today)
    {
        // A reopened payday keeps what was decided, to be closed again: no figure of the past, but one of the routine begun.
        DebtsAhead ahead = DebtsAhead.Of(book with { Draft = null }, today);
        ahead.Debts.ToList().ForEach(debt => Say($"ahead {debt}"));
        Say($"{ahead.Order} {ahead.Extra} {ahead.Saved} {ahead.OtherCosts} {string.Join(' ', ahead.Soon)}");
        foreach (DebtProjection course in new[] { ahead.AtMinimums, ahead.AsProposed, ahead.OtherOrder })
        {
            Say($"course {course.Months} {course.Interest} {string.Join(' ', course.Owed.Take(20))} {string.Join("; ", course.Debts)} {string.Join(' ', course.Never)} {string.Join("; ", course.RollOns)}");
        }
    }

    private void Months(LocalDate from, LocalDate to)
    {
        var months = MonthFlows.Of(book);
        Say($"months {months.First} {months.Last}");
        foreach (MonthFlow month in months.Between(from.ToYearMonth(), to))
        {
            Say($"{month.Month} {month.Saved} {month.Owed} {Said(month.Flow)} to date {Said(months.YearTo(month.Month))} usual {months.UsualOf(flow => flow.WentOut, month.Month)}");
        }

        static string Said(Flow flow) => $"{flow.CameIn} {flow.WentOut} {flow.Opened} {string.Join(' ', flow.Where.OrderBy(pair => pair.Key.Key, StringComparer.Ordinal).Select(pair => $"{pair.Key.Key}={pair.Value}"))}";
    }

    private void Routine()
    {
        Result<LocalDate> next = Core.Routines.Routine.Next(book);
        RoutinePlan plan = Core.Routines.Routine.Plan(book, new RoutineDraft(next.Value)).Value!;
        Say($"{plan.Income.Overdraft} {plan.Income.CarriedOver} {plan.Income.ToPlace} {plan.Bills.Total} {plan.Debts.Total} {plan.Pots.Total} {plan.LeftToPlace} {Listed(plan.Withdrawal.Plan.Withdraw)} {Listed(plan.Withdrawal.LooseAfter)}");
        plan.Bills.Dues.ToList().ForEach(due => Say($"{due}"));
        plan.Bills.SetAsides.ToList().ForEach(line => Say($"{line}"));
        plan.Debts.Rows.ToList().ForEach(row => Say($"{row}"));
        plan.Pots.Rows.ToList().ForEach(row => Say($"{row.Pot.Id} {row.HasNow} {row.Wanted} {row.Fill} {row.Why}"));
        plan.Surplus.Placements.ToList().ForEach(placement => Say($"{placement}"));
        plan.Withdrawal.Pots.ToList().ForEach(row => Say($"{row.Pot.Id} {row.Amount} {row.KeptBack} {string.Join("; ", row.Weeks.Select(week => $"{week.Week} {Listed(week.Notes)}"))}"));
        OwedBackOffer? offer = OwedBackOffer.Of(plan);
        Say($"{Listed(offer?.Notes)} {offer?.Together} {offer?.Apart}");
    }

    private IEnumerable<LedgerEnd> Ends() => book.Ledger.Movements
        .SelectMany(movement => new[] { movement.From, movement.To })
        .Distinct()
        .Where(end => end is not LedgerEnd.Outside { Kind: OutsideKind.Opening, Text: not "" } && book.Ledger.Of(end).Count > 0)
        .OrderBy(end => end.Key, StringComparer.Ordinal);

    private static string Listed(Notes? notes) =>
        notes is null ? "?" : string.Join('+', notes.OrderBy(note => note.Key).Select(note => $"{note.Value}x{note.Key}"));

    private void Say(string line) => text.AppendLine(line);
}
