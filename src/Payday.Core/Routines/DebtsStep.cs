using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>At least the minimum on every debt that falls due in the period, or did before it and hasn't left the account. Worked out by <see cref="DebtRules"/>.</summary>
/// <param name="Rows">A row for each due date, or one for a debt that is not due in this period; debt by debt.</param>
/// <param name="Total">What today's money gives; below zero where what waited for a debt isn't needed any more.</param>
/// <param name="Due">What is paid on all rows, from today's money and from what is held.</param>
/// <param name="Charges">The interest that is charged up to the payday, each on its own day.</param>
/// <param name="Covers">By debt, in household order: what the account holds for it, and what today adds.</param>
public sealed record DebtsStep(
    ImmutableArray<DebtRow> Rows, Money Total, Money Due, ImmutableArray<InterestCharge> Charges, ImmutableArray<DebtCover> Covers)
{
    // Others with other rows, other covers.
    private Grouped<DebtId, DebtRow> byDebt = ByDebt(Rows);
    private Grouped<DebtId, DebtCover> coverByDebt = ByDebt(Covers);

    /// <summary>A row for each due date, or one for a debt that is not due in this period; debt by debt.</summary>
    public ImmutableArray<DebtRow> Rows
    {
        get;
        init => (field, byDebt) = (value, ByDebt(value));
    } = Rows;

    /// <summary>By debt, in household order: what the account holds for it, and what today adds.</summary>
    public ImmutableArray<DebtCover> Covers
    {
        get;
        init => (field, coverByDebt) = (value, ByDebt(value));
    } = Covers;

    /// <summary>The rows of one debt, by due date.</summary>
    internal IEnumerable<DebtRow> RowsOf(DebtId debtId) => byDebt.Of(debtId);

    /// <summary>What the account holds for one debt, and what today adds.</summary>
    internal IEnumerable<DebtCover> CoverOf(DebtId debtId) => coverByDebt.Of(debtId);

    private static Grouped<DebtId, DebtRow> ByDebt(ImmutableArray<DebtRow> rows) => new(rows, static row => row.DebtId);

    private static Grouped<DebtId, DebtCover> ByDebt(ImmutableArray<DebtCover> covers) => new(covers, static cover => cover.DebtId);
}

/// <summary>What the account has for a debt.</summary>
/// <param name="DebtId">The debt.</param>
/// <param name="Held">What waits there for its payments, zero or more.</param>
/// <param name="Taken">What is added today; below zero where it isn't needed any more.</param>
public sealed record DebtCover(DebtId DebtId, Money Held, Money Taken)
{
    /// <summary>What waits for what was bought with the card and isn't needed, as nothing is owed any more; zero or more.</summary>
    public Money Freed { get; init; } = Money.Zero(Held.Currency);

    /// <summary>What goes on waiting for what was bought with the card, with the cash that pots still owe back for it; zero or more.</summary>
    public Money Waits { get; init; } = Money.Zero(Held.Currency);
}

/// <summary>A debt at one due date.</summary>
/// <param name="DebtId">The debt.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Due">When the minimum is due, before the period where it didn't leave the account then; null where none is due.</param>
/// <param name="YearlyRate">A fraction, e.g. 0.1999.</param>
/// <param name="Balance">What is owed before.</param>
/// <param name="Interest">The interest charged since the row before, up to the due date, that of the period's last days with the last row.</param>
/// <param name="Minimum">The least that must be paid.</param>
/// <param name="Payment">What is paid.</param>
/// <param name="Changed">Whether the person changed it.</param>
public sealed record DebtRow(
    DebtId DebtId,
    string Name,
    LocalDate? Due,
    decimal YearlyRate,
    Money Balance,
    Money Interest,
    Money Minimum,
    Money Payment,
    bool Changed)
{
    /// <summary>What the minimum is known by, or null where none is due.</summary>
    public DueKey? Key { get; init; }

    /// <summary>What of the interest is expected only, as its day is still to come.</summary>
    public Money Expected { get; init; } = Money.Zero(Balance.Currency);

    /// <summary>Whether it has left the account: proposed for what is due by the payday.</summary>
    public bool Paid { get; init; }

    /// <summary>Whether the person said so.</summary>
    public bool IsTicked { get; init; }

    /// <summary>The day on which it leaves the account where it is ticked.</summary>
    public LocalDate? PaidOn { get; init; }

    /// <summary>What was paid of it before.</summary>
    public Money PaidBefore { get; init; } = Money.Zero(Balance.Currency);

    /// <summary>What of the payment was bought with the card, and waits in the account for it: never from today's money; zero or more.</summary>
    public Money Bought { get; init; } = Money.Zero(Balance.Currency);

    /// <summary>The payment without that.</summary>
    public Money Own => Payment - Bought;

    /// <summary>What is owed after.</summary>
    public Money NewBalance => Balance + Interest - Payment;
}
