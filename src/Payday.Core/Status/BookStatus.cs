using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Counts;
using Payday.Core.Fills;
using Payday.Core.Ledgers;

namespace Payday.Core.Status;

/// <summary>What a household would like to know at a glance.</summary>
/// <param name="NextPayday">The first payday that can be closed, or null where none is known.</param>
/// <param name="PaydayDue">Whether it is today or earlier.</param>
/// <param name="CountOpenSince">The fill day of the first week that is over and not counted, or null.</param>
/// <param name="FillsWaiting">How many fills of the wallet wait; see <see cref="WalletFills.Waiting"/>.</param>
/// <param name="OwedBack">The cash that waits to be taken to the bank.</param>
/// <param name="OpenDifferences">How many differences of counts are not cleared up.</param>
public sealed record BookStatus(
    LocalDate? NextPayday,
    bool PaydayDue,
    LocalDate? CountOpenSince,
    int FillsWaiting,
    Money OwedBack,
    int OpenDifferences)
{
    /// <summary>What the last payday put on debts and the person may have to pay yet, zero or more; see <see cref="PaymentToMake"/>.</summary>
    public required Money ExtraToPay { get; init; }

    /// <summary>What is here and not at the bank yet; null where nothing is, or it isn't known.</summary>
    public OnTheWay? OnTheWay { get; init; }

    /// <summary>When the account was last held against the bank, and what came of it; null where it never was.</summary>
    public BankAgreement? Bank { get; init; }

    /// <summary>
    /// Whether something is to be done now: a payday, a count, today's fills, owed-back cash, or a payment. An open difference can wait.
    /// </summary>
    public bool IsWaiting => PaydayDue || CountOpenSince is not null || FillsWaiting > 0 || OwedBack.IsPositive || ExtraToPay.IsPositive;

    /// <summary>The status on a day.</summary>
    public static BookStatus Of(Book book, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        BankHolidays holidays = book.Household.Holidays;
        LocalDate? next = book.Household.Paydays.Next(book.OpenFrom.PlusDays(-1))?.Date;
        ImmutableArray<OpenWeek> open = CountWeeks.Open(book, today);
        return new BookStatus(
            next,
            next <= today,
            open.IsEmpty ? null : open[0].Week,
            WalletFills.Waiting(book, today).Length,
            Money.Sum(
                book.Ledger.Balances.PurposesIn(Place.Cash).Where(purpose => purpose.Purpose.Kind == PurposeKind.OwedBack).Select(purpose => purpose.Amount),
                book.Household.Currency),
            Differences.Open(book).Length)
        {
            ExtraToPay = Money.Sum(PaymentToMake.Of(book).Select(payment => payment.Amount), book.Household.Currency),
            OnTheWay = OnTheWay.Of(book),
            Bank = BankAgreement.Of(book),
        };
    }
}
