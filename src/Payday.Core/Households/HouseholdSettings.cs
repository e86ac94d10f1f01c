using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Debts;

namespace Payday.Core.Households;

/// <summary>Currency, cash, bank and habits of a household.</summary>
/// <param name="Currency">The currency of every amount.</param>
/// <param name="Numbers">How numbers are written.</param>
/// <param name="Cash">The notes and coins in use.</param>
/// <param name="FillDay">The weekday on which the wallet is filled.</param>
/// <param name="Holidays">The bank holidays.</param>
/// <param name="SetAsides">How money is held back for bills.</param>
/// <param name="Bank">Where notes come from.</param>
/// <param name="CardRounding">How a card purchase is owed back.</param>
/// <param name="SurplusOrder">Which debt is proposed for the surplus.</param>
/// <param name="SlipLines">Lines the person wants at the top of the slip; nothing private is there without them.</param>
public sealed record HouseholdSettings(
    Currency Currency,
    NumberStyle Numbers,
    CashPieces Cash,
    IsoDayOfWeek FillDay,
    HolidayRules Holidays,
    SetAsideMode SetAsides,
    CashSource Bank,
    CardRounding CardRounding,
    DebtOrder SurplusOrder,
    ImmutableArray<string> SlipLines)
{
    /// <summary>
    /// What the account's buffer keeps at least when it helps a payday that falls short, zero or more; null where the
    /// person is asked each time.
    /// </summary>
    public Money? BufferKeeps { get; init; }

    /// <summary>How the full screen shows.</summary>
    public ScreenLook Look { get; init; }

    /// <summary>How far below zero the bank lets the account go, by its terms, zero or more; null for not at all.</summary>
    public Money? Overdraft { get; init; }

    /// <summary>How a date in figures such as 10/9/2026 is read where this household lives; by its currency.</summary>
    public DateOrder DateOrder => DateOrders.Of(Currency);

    /// <summary>The fill day of the week that a date lies in: on it or before.</summary>
    public LocalDate WeekOf(LocalDate date) => date.DayOfWeek == FillDay ? date : date.Previous(FillDay);
}

/// <summary>How a card purchase is owed back.</summary>
public enum CardRounding
{
    /// <summary>Rounded up to the smallest note in use.</summary>
    Up,

    /// <summary>To the minor unit.</summary>
    Exact,
}
