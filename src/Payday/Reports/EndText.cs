using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Reports;

/// <summary>The ends of movements in the person's own words.</summary>
internal static class EndText
{
    /// <summary>E.g. <c>cash: Food</c>, <c>paid: Rent</c>.</summary>
    public static string Of(Household household, LedgerEnd end) => end switch
    {
        LedgerEnd.Held held => $"{(held.Place == Place.Account ? "account" : "cash")}: {Of(household, held.Purpose)}",
        LedgerEnd.Owed owed => $"owed: {Debt(household, owed.DebtId)}",
        LedgerEnd.Outside outside => Outside(household, outside),
        _ => end.Key,
    };

    /// <summary>A purpose, e.g. <c>set aside for Rent</c>.</summary>
    public static string Of(Household household, Purpose purpose) => purpose.Kind switch
    {
        PurposeKind.Buffer => "buffer",
        PurposeKind.LeftToPlace => "left to place",
        PurposeKind.SetAside => "set aside for " + Bill(household, purpose.Id),
        PurposeKind.KeptBack => "kept back for " + Pot(household, purpose.Id),
        PurposeKind.Wallet => "wallet, " + Pot(household, purpose.Id),
        PurposeKind.OwedBack => "owed back by " + Pot(household, purpose.Id),
        _ => Pot(household, purpose.Id),
    };

    private static string Outside(Household household, LedgerEnd.Outside outside) => outside.Kind switch
    {
        OutsideKind.Source => "income: " + (household.Sources.FirstOrDefault(source => source.Id == outside.Id)?.Name ?? outside.Id),
        OutsideKind.Bill => "paid: " + Bill(household, outside.Id),
        OutsideKind.Interest => "interest: " + Debt(household, outside.Id),
        OutsideKind.Spending => "spent: " + (outside.Id.Length == 0 ? "buffer" : Pot(household, outside.Id)),
        OutsideKind.Difference => "missing: " + Pot(household, outside.Id),
        _ => "before the start",
    };

    private static string Bill(Household household, string id) => household.Bills.FirstOrDefault(bill => bill.Id == id)?.Name ?? id;

    private static string Pot(Household household, string id) => household.Pots.FirstOrDefault(pot => pot.Id == id)?.Name ?? id;

    private static string Debt(Household household, string id) => household.Debts.FirstOrDefault(debt => debt.Id == id)?.Name ?? id;
}
