using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>The ends of movements in the person's own words.</summary>
internal static class EndText
{
    /// <summary>E.g. <c>cash: Food</c>, <c>paid: Rent</c>.</summary>
    public static string Of(Household household, LedgerEnd end) => end switch
    {
        LedgerEnd.At held => $"{(held.Place == Place.Account ? "account" : "cash")}: {Of(household, held.Purpose)}",
        LedgerEnd.Owed owed => $"owed: {Debt(household, owed.DebtId)}",
        LedgerEnd.Outside outside => Outside(household, outside),
        _ => end.Key,
    };

    /// <summary>A purpose, e.g. <c>set aside for Rent</c>.</summary>
    public static string Of(Household household, Purpose purpose) => purpose switch
    {
        { Kind: PurposeKind.Buffer } => "buffer",
        { Kind: PurposeKind.LeftToPlace } => "left to place",
        { BillId: { } bill } => "set aside for " + Bill(household, bill),
        { Kind: PurposeKind.ForCard, DebtId: { } card } => "bought with " + Debt(household, card),
        { DebtId: { } debt } => "set aside for " + Debt(household, debt),
        { Kind: PurposeKind.Overdraft } => "overdraft",
        { Kind: PurposeKind.KeptBack, PotId: { } pot } => "not in notes, " + Pot(household, pot),
        { Kind: PurposeKind.Wallet, PotId: { } pot } => "wallet, " + Pot(household, pot),
        { Kind: PurposeKind.OwedBack, PotId: { } pot } => "to pay back, " + Pot(household, pot),
        { PotId: { } pot } => Pot(household, pot),
        _ => "",
    };

    /// <summary>What the household calls a bill; its id where it has it no more.</summary>
    public static string Bill(Household household, BillId id) => household.Bills.FirstOrDefault(bill => bill.Id == id)?.Name ?? id.Text;

    /// <summary>What the household calls a pot; its id where it has it no more.</summary>
    public static string Pot(Household household, PotId id) => household.Pots.FirstOrDefault(pot => pot.Id == id)?.Name ?? id.Text;

    /// <summary>What the household calls a debt; its id where it has it no more.</summary>
    public static string Debt(Household household, DebtId id) => household.Debts.FirstOrDefault(debt => debt.Id == id)?.Name ?? id.Text;

    /// <summary>What the household calls an income source; its id, or the name of a one-off, where it has it not.</summary>
    public static string Source(Household household, SourceId id) => household.Sources.FirstOrDefault(source => source.Id == id)?.Name ?? id.Text;

    private static string Outside(Household household, LedgerEnd.Outside outside) => outside switch
    {
        { SourceId: { } source } => "income: " + Source(household, source),
        { BillId: { } bill } => "paid: " + Bill(household, bill),
        { DebtId: { } debt } => "interest: " + Debt(household, debt),
        { Kind: OutsideKind.Spending } => "spent: " + (outside.PotId is { } pot ? Pot(household, pot) : "buffer"),
        { PotId: { } pot } => "missing: " + Pot(household, pot),
        { Entry: { } kind } => EntryKindText.Of(kind),
        _ => "before the start",
    };
}
