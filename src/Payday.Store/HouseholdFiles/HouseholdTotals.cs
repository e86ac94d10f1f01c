using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Checks that look at all of a household's amounts together.</summary>
internal static class HouseholdTotals
{
    // Room for a thousand paydays before a sum leaves 64 bits.
    private const long LargestTotal = long.MaxValue / 1_000;

    /// <summary>Reports a total that is too large to count with, and opening parts above the account.</summary>
    public static void Check(JsonCursor root, JsonCursor? opening, Household household)
    {
        Int128 total = 0;
        foreach (Money amount in Amounts(household))
        {
            total += amount.MinorUnits;
        }

        foreach ((long note, int count) in household.Opening.NotesOnHand)
        {
            total += (Int128)note * count;
        }

        foreach (PotKind.Ladder ladder in household.Pots.Select(pot => pot.Kind).OfType<PotKind.Ladder>())
        {
            total += (Int128)ladder.Unit.MinorUnits * ladder.Steps * ladder.Steps;
        }

        if (total > LargestTotal)
        {
            Money largest = Amounts(household).Max();
            root.Refuse($"The amounts add up to more than can be counted exactly; look for one with too many digits (the largest is {largest.ToPlain()}).");
        }
        else if (opening is null || opening.IsSound)
        {
            CheckAccount(opening?.Fields().Required("account") ?? root, household);
        }
    }

    /// <summary>Every amount of a household, notes on hand aside.</summary>
    public static IEnumerable<Money> Amounts(Household household) =>
    [
        .. household.Settings.Cash.Notes,
        .. household.Settings.Cash.Coins,
        .. BankFormat.Amounts(household.Settings.Bank),
        household.Opening.Account,
        .. household.Opening.SetAside.Values,
        .. household.Opening.Pots.Values,
        .. household.Sources.Select(source => source.Expected),
        .. household.Bills.Select(bill => bill.Amount),
        .. household.Debts.Select(debt => debt.Opening),
        .. household.Debts.Select(debt => MinimumFormat.Amount(debt.Minimum)),
        .. household.Pots.Select(pot => pot.Floor),
        .. household.Pots.SelectMany(pot => PotKindFormat.Amounts(pot.Kind)),
        .. household.Pots.SelectMany(pot => NoteWishesFormat.Amounts(pot.Notes)),
    ];

    private static void CheckAccount(JsonCursor place, Household household)
    {
        OpeningBalances opening = household.Opening;
        Money parts = Money.Sum(opening.SetAside.Values, household.Currency);
        foreach (Pot pot in household.Pots.Where(pot => pot.Held == Held.InTheAccount))
        {
            parts += opening.Pots.GetValueOrDefault(pot.Id, Money.Zero(household.Currency));
        }

        if (parts > opening.Account)
        {
            place.Refuse($"The set-asides of bills and the pots held in the account already have {parts.ToPlain()}, but the account has {opening.Account.ToPlain()}; raise \"account\" or lower a \"setAside\" or \"has\".");
        }
    }
}
