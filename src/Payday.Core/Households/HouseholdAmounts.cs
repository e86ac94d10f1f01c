using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Debts;
using Payday.Core.Pots;

namespace Payday.Core.Households;

/// <summary>What a household has in amounts, all together.</summary>
public static class HouseholdAmounts
{
    /// <summary>Every amount of a household, notes on hand aside.</summary>
    public static IEnumerable<Money> Amounts(this Household household)
    {
        ArgumentNullException.ThrowIfNull(household);
        return
        [
            .. household.Settings.Cash.Notes,
            .. household.Settings.Cash.Coins,
            .. Of(household.Settings.Bank),
            .. Of(household.Settings.BufferKeeps),
            .. Of(household.Settings.Overdraft),
            household.Opening.Account,
            .. household.Opening.SetAside.Values,
            .. household.Opening.Pots.Values,
            .. household.Sources.SelectMany(source => Of(source.Later).Prepend(source.Expected)),
            .. household.Bills.SelectMany(bill => Of(bill.Later).Prepend(bill.Amount)),
            .. household.Debts.Select(debt => debt.Opening),
            .. household.Debts.Select(debt => Of(debt.Minimum)),
            .. household.Pots.Select(pot => pot.Floor),
            .. household.Pots.SelectMany(pot => pot.Kind.Amounts),
            .. household.Pots.SelectMany(pot => Of(pot.Notes)),
        ];
    }

    private static Money[] Of(CashSource bank) => bank is CashSource.Machine machine ? [.. machine.Notes, .. Of(machine.Limit)] : [];

    private static Money Of(MinimumRule minimum) => minimum switch
    {
        MinimumRule.Fixed always => always.Amount,
        MinimumRule.PercentOrFloor rule => rule.Floor,
        _ => throw new ArgumentOutOfRangeException(nameof(minimum)),
    };

    private static Money[] Of(NoteWishes wishes) =>
        [.. Of(wishes.TopNote), .. wishes.Small is { } small ? new[] { small.Note, small.AtLeast } : []];

    private static IEnumerable<Money> Of(LaterAmounts later) => later.All.Select(change => change.Amount);

    private static Money[] Of(Money? amount) => amount is { } there ? [there] : [];
}
