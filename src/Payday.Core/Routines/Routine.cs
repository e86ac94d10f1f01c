using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Core.Routines;

/// <summary>The payday routine: from the book and the decisions so far to all seven steps as they stand.</summary>
public static class Routine
{
    /// <summary>The first payday that can be closed, or why there is none.</summary>
    public static Result<LocalDate> Next(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        BankHolidays holidays = book.Household.Holidays;
        return book.Household.Paydays.Next(book.OpenFrom.PlusDays(-1)) is { } payday
            ? Result.Of(payday.Date)
            : Result.Refused<LocalDate>(new RoutineFault.NoPaydayFrom(book.OpenFrom));
    }

    /// <summary>The decisions to go on with: those begun, or none yet for the payday asked for or the first that can be closed.</summary>
    /// <param name="book">The book.</param>
    /// <param name="on">The payday asked for, or null for the one that is next.</param>
    public static Result<RoutineDraft> Begun(Book book, LocalDate? on = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.Draft is { } begun && (on is null || on == begun.Payday))
        {
            return Result.Of(begun);
        }

        Result<LocalDate> date = on is { } named ? Result.Of(named) : Next(book);
        return date.Map(payday => new RoutineDraft(payday));
    }

    /// <summary>Computes the routine of a payday.</summary>
    /// <param name="book">The book.</param>
    /// <param name="draft">The payday and what has been decided.</param>
    /// <returns>The seven steps; or why this payday can't be worked on.</returns>
    public static Result<RoutinePlan> Plan(Book book, RoutineDraft draft)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(draft);
        return FactsOf(book, draft).Map(Plan);
    }

    private static RoutinePlan Plan(RoutineFacts facts)
    {
        Book book = facts.Book;
        Money nothing = Money.Zero(book.Household.Currency);
        IncomeStep income = IncomeRules.Of(book, facts.Payday, facts.Draft);
        DebtsStep debts = DebtRules.Of(book, facts.Period, facts.Holidays, facts.Draft);
        BillsStep bills = BillRules.Of(facts, income, nothing);

        // The buffer helps first, then the pots give up what is above their floors.
        PotsStep wanted = PotRules.Wanted(facts);
        income = income with
        {
            Buffer = BufferHelp.Of(
                bills.Total + debts.Total + wanted.Total - income.Free,
                book.Ledger.Balances[LedgerEnd.InAccount(Purpose.Buffer)],
                book.Household.Settings.BufferKeeps,
                facts.Draft.FromBuffer),
        };
        PotsStep pots = PotRules.Cut(facts, wanted, income.ToPlace - bills.Total - debts.Total);
        Money left = income.ToPlace - bills.Total - debts.Total - pots.Total;
        if (left.IsNegative)
        {
            // The pots are at their floors. What is set aside for later gives way before anything due now does.
            Money less = Money.Min(-left, (bills.Planned - bills.Needed).ClampToZero());
            bills = BillRules.Of(facts, income, less);
            left += less;
        }

        SurplusStep surplus = SurplusRules.Of(facts, debts, left);
        return new RoutinePlan(
            book,
            facts.Draft,
            facts.Payday,
            facts.Period,
            income,
            bills,
            debts,
            pots,
            surplus,
            left.IsNegative ? UnpayableRules.Of(facts.Period.First, income.ToPlace, bills, debts, pots) : [])
        {
            InNotes = () => WithdrawalRules.Of(facts, pots, surplus),
        };
    }

    private static Result<RoutineFacts> FactsOf(Book book, RoutineDraft draft)
    {
        LocalDate date = draft.Payday;
        Household household = book.Household;
        BankHolidays holidays = household.Holidays;
        if (date < book.OpenFrom)
        {
            return Result.Refused<RoutineFacts>(book.LastClosed is { } last && last.Payday >= date
                ? new RoutineFault.Closed(last.Payday)
                : new RoutineFault.BeforeStart(household.Start, date));
        }

        ImmutableArray<ScheduledPayday> from = household.Paydays.Between(date, date.PlusMonths(Bills.BillDues.MonthsAhead));
        if (from.IsEmpty || from[0].Date != date)
        {
            return Result.Refused<RoutineFacts>(NotAPayday(book, holidays, date));
        }

        if (from.Length == 1)
        {
            return Result.Refused<RoutineFacts>(new RoutineFault.NoPaydayAfter(date));
        }

        return Result.Of(new RoutineFacts(
            book,
            draft,
            from[0],
            new PayPeriod(date, from[1].Date.PlusDays(-1)),
            holidays,
            from[1..],
            household.Paydays.MonthsOf(date)));
    }

    // The payday to work on next is the first that is not closed, whatever date was named.
    private static RoutineFault.NotAPayday NotAPayday(Book book, BankHolidays holidays, LocalDate date)
    {
        LocalDate? open = book.Household.Paydays.Next(book.OpenFrom.PlusDays(-1))?.Date;
        LocalDate? after = book.Household.Paydays.Next(date)?.Date;
        return new RoutineFault.NotAPayday(date, open, after != open ? after : null);
    }
}
