using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Pots;

namespace Payday.Core.Households;

/// <summary>The one set of settings, people, bills, debts and pots in a data folder.</summary>
/// <remarks>
/// Only the core makes one: outside of it there is none but what <c>HouseholdCheck</c> made of a draft, or a
/// rule of one that it had made, so that whoever has a household need not ask whether it is one.
/// </remarks>
public sealed record Household
{
    /// <summary>How many years after the start a date of the household may lie.</summary>
    public const int MostYears = 100;

    // Another one with other sources or settings.
    private PaydaysMemory memory = new();

    internal Household(
        string name,
        LocalDate start,
        HouseholdSettings settings,
        ImmutableArray<IncomeSource> sources,
        ImmutableArray<Bill> bills,
        ImmutableArray<Debt> debts,
        ImmutableArray<Pot> pots,
        OpeningBalances opening)
    {
        Name = name;
        Start = start;
        Settings = settings;
        Sources = sources;
        Bills = bills;
        Debts = debts;
        Pots = pots;
        Opening = opening;
    }

    /// <summary>What the person calls it.</summary>
    public string Name { get; internal init; }

    /// <summary>The date of the opening balances; the first payday is on it or after.</summary>
    public LocalDate Start { get; internal init; }

    /// <summary>Currency, cash, bank and habits.</summary>
    public HouseholdSettings Settings
    {
        get;
        internal init => (field, memory) = (value, new());
    }

    /// <summary>Who pays, and when.</summary>
    public ImmutableArray<IncomeSource> Sources
    {
        get;
        internal init => (field, memory) = (value, new());
    }

    /// <summary>What falls due.</summary>
    public ImmutableArray<Bill> Bills { get; internal init; }

    /// <summary>What is owed.</summary>
    public ImmutableArray<Debt> Debts { get; internal init; }

    /// <summary>The purposes with a balance, in the order shown.</summary>
    public ImmutableArray<Pot> Pots { get; internal init; }

    /// <summary>What was there at the start.</summary>
    public OpeningBalances Opening { get; internal init; }

    /// <summary>The currency of every amount.</summary>
    public Currency Currency => Settings.Currency;

    /// <summary>The paydays of its sources by its bank holidays, each worked out once.</summary>
    public KnownPaydays Paydays => memory.Of(this);

    /// <summary>Its bank holidays.</summary>
    public BankHolidays Holidays => Paydays.Holidays;
}
