using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ledgers;

namespace Payday.Core.Reconciling;

/// <summary>The account here held against the bank, as far as it is entered.</summary>
/// <param name="Book">The book.</param>
/// <param name="Draft">What was entered.</param>
/// <param name="Lines">The open lines: those that the bank hadn't shown at the last reconciliation; by their days.</param>
/// <remarks>Rule (design, 14): expected at the bank = account here + out on its way - in on its way; difference = bank - expected.</remarks>
public sealed record ReconciliationPlan(Book Book, ReconciliationDraft Draft, ImmutableArray<AccountLine> Lines)
{
    /// <summary>What is in the account here.</summary>
    public Money Here => Book.Ledger.Balances.In(Place.Account);

    /// <summary>All that is here and not at the bank: above zero what comes in, below what goes out.</summary>
    public Money OnItsWay => Money.Sum(Lines.Where(line => !IsAtBank(line)).Select(line => line.Amount), Book.Household.Currency);

    /// <summary>What the bank's balance should be.</summary>
    public Money Expected => Here - OnItsWay;

    /// <summary>The bank's balance less what it should be; null while it isn't entered.</summary>
    public Money? Difference => Draft.Balance is { } balance ? balance - Expected : null;

    /// <summary>What the difference is called: as typed, or as the last reconciliation has it where the difference is still the same; empty for nothing.</summary>
    public string Name => Difference is null or { IsZero: true } ? ""
        : Draft.Name ?? (Book.Weeks.StandingReconciliations.LastOrDefault() is { } last && last.Difference == Difference ? last.Name : "");

    /// <summary>Where to look for the difference, the likeliest first; none where there is none, or no balance yet.</summary>
    public ImmutableArray<Culprit> Culprits => Difference is { } difference ? Reconciling.Culprits.Of(Lines, Draft.AtBank, difference) : [];

    /// <summary>The reconciliation as it is entered; what was ticked and is no line any more is left out.</summary>
    public static ReconciliationPlan Of(Book book, ReconciliationDraft draft)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(draft);
        ImmutableHashSet<long> before = AccountLines.AtBank(book);
        ImmutableArray<AccountLine> open = [.. AccountLines.Of(book).All.Where(line => !before.Contains(line.Number)).OrderBy(line => line.Date).ThenBy(line => line.Number)];
        return new ReconciliationPlan(book, draft with { AtBank = draft.AtBank.Intersect(open.Select(line => line.Number)) }, open);
    }

    /// <summary>The reconciliation that was begun, or a new one.</summary>
    public static ReconciliationPlan Of(Book book, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Of(book, book.Weeks.Reconciling ?? new ReconciliationDraft(today, null, []));
    }

    /// <summary>Whether a line is ticked.</summary>
    public bool IsAtBank(AccountLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Draft.AtBank.Contains(line.Number);
    }

    /// <summary>The same with another draft.</summary>
    public ReconciliationPlan With(ReconciliationDraft draft) => Of(Book, draft);

    /// <summary>The same with another balance of the bank's. A name stays only while the difference it was given to does.</summary>
    public ReconciliationPlan WithBalance(Money balance) =>
        With(Draft with { Balance = balance, Name = Draft.Balance == balance ? Draft.Name : null });

    /// <summary>The book in which what was entered so far is kept.</summary>
    public Book Kept() => Book with { Weeks = Book.Weeks with { Reconciling = Draft } };

    /// <summary>The same with a line ticked, or not ticked any more.</summary>
    /// <returns>The plan; or that there is no such line.</returns>
    public Result<ReconciliationPlan> Tick(long number) => Lines.Any(line => line.Number == number)
        ? Result.Of(With(Draft with { AtBank = Draft.AtBank.SymmetricExcept([number]) }))
        : Result.Refused<ReconciliationPlan>(new ReconcileFault.NoSuchLine(number));

    /// <summary>The same with every line ticked; with none where every one is.</summary>
    public ReconciliationPlan TickAll() => With(Draft with { AtBank = Draft.AtBank.Count == Lines.Length ? [] : [.. Lines.Select(line => line.Number)] });

    /// <summary>Writes down that the bank was held against the account here: what is ticked is at the bank from now on. A difference is written down with it and stays in view.</summary>
    /// <returns>The book afterwards, the reconciliation being its last; or why it can't be.</returns>
    public Result<Book> Accept()
    {
        if (Draft.Balance is not { } balance)
        {
            return Result.Refused<Book>(new ReconcileFault.NoBalance());
        }

        if (DayFault(Book, Draft.Date) is { } fault)
        {
            return Result.Refused<Book>(fault);
        }

        WeekRecords weeks = Book.Weeks;
        return Result.Of(Book with
        {
            Weeks = weeks with
            {
                Reconciliations = weeks.Reconciliations.Add(new Reconciliation(weeks.Reconciliations.Length + 1, Draft.Date, balance, Difference!.Value, [.. Draft.AtBank])
                {
                    Name = Name.Trim(),
                    LastMovement = Book.Ledger.Movements.Count,
                }),
                Reconciling = null,
            },
        });
    }

    /// <summary>Why a reconciliation can't be of a day; null where it can.</summary>
    public static ReconcileFault? DayFault(Book book, LocalDate date)
    {
        ArgumentNullException.ThrowIfNull(book);
        return date < book.Household.Start ? new ReconcileFault.BeforeStart(date, book.Household.Start)
            : book.Weeks.StandingReconciliations.LastOrDefault() is { } last && date < last.Date ? new ReconcileFault.BeforeLast(date, last.Date)
            : null;
    }
}
