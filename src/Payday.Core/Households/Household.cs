using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Pots;

namespace Payday.Core.Households;

/// <summary>The one set of settings, people, bills, debts and pots in a data folder.</summary>
/// <param name="Name">What the person calls it.</param>
/// <param name="Start">The date of the opening balances; the first payday is on it or after.</param>
/// <param name="Settings">Currency, cash, bank and habits.</param>
/// <param name="Sources">Who pays, and when.</param>
/// <param name="Bills">What falls due.</param>
/// <param name="Debts">What is owed.</param>
/// <param name="Pots">The purposes with a balance, in the order shown.</param>
/// <param name="Opening">What was there at the start.</param>
public sealed record Household(
    string Name,
    LocalDate Start,
    HouseholdSettings Settings,
    ImmutableArray<IncomeSource> Sources,
    ImmutableArray<Bill> Bills,
    ImmutableArray<Debt> Debts,
    ImmutableArray<Pot> Pots,
    OpeningBalances Opening)
{
    /// <summary>How many years after the start a date of the household may lie.</summary>
    public const int MostYears = 100;

    /// <summary>The currency of every amount.</summary>
    public Currency Currency => Settings.Currency;
}
