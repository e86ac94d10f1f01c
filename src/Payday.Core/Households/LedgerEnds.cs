using Payday.Core.Ledgers;

namespace Payday.Core.Households;

/// <summary>Which ends of the ledger a household knows.</summary>
public static class LedgerEnds
{
    /// <summary>Whether the pot, bill or debt of an end is one of the household's, in the place that the end says; true of ends that are of none.</summary>
    public static bool IsOf(Household household, LedgerEnd end)
    {
        ArgumentNullException.ThrowIfNull(household);
        return end switch
        {
            LedgerEnd.Owed owed => household.Debts.Any(debt => debt.Id == owed.DebtId),
            LedgerEnd.At { Purpose: { Kind: PurposeKind.Pot } purpose } at => household.Pots.Any(pot => pot.Id == purpose.PotId && pot.Place == at.Place),
            LedgerEnd.At { Purpose.PotId: { } id } => household.Pots.Any(pot => pot.Id == id && pot.Place == Place.Cash),
            LedgerEnd.At { Purpose.BillId: { } id } => household.Bills.Any(bill => bill.Id == id),
            LedgerEnd.At { Purpose.DebtId: { } id } => household.Debts.Any(debt => debt.Id == id),
            _ => true,
        };
    }

    /// <summary>What the household calls the pot, bill or debt of an end; null where it is of none, or of one that it doesn't have.</summary>
    public static string? NameIn(Household household, LedgerEnd end)
    {
        ArgumentNullException.ThrowIfNull(household);
        return end switch
        {
            LedgerEnd.Owed owed => household.Debts.FirstOrDefault(debt => debt.Id == owed.DebtId)?.Name,
            LedgerEnd.At { Purpose.PotId: { } id } => household.Pots.FirstOrDefault(pot => pot.Id == id)?.Name,
            LedgerEnd.At { Purpose.BillId: { } id } => household.Bills.FirstOrDefault(bill => bill.Id == id)?.Name,
            LedgerEnd.At { Purpose.DebtId: { } id } => household.Debts.FirstOrDefault(debt => debt.Id == id)?.Name,
            _ => null,
        };
    }
}
