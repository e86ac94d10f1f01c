using System.Globalization;
using Payday.Core.BankLines;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Account lines in the person's words.</summary>
internal static class AccountLineText
{
    /// <summary>E.g. <c>Rent, due 3 Mar</c>, <c>Cash fetched</c>, <c>Food, shop</c>.</summary>
    public static string Of(Household household, AccountLine line)
    {
        string what = Words(line);
        string name = line.Kind switch
        {
            AccountLineKind.Withdrawal => "Cash fetched",
            AccountLineKind.Deposit => "Cash brought",
            _ => line.Further.Prepend(line.Other).Select(end => Of(household, end)).InWords(),
        };
        string cheque = line.Cheque is { } number ? $", cheque {number.ToString(CultureInfo.InvariantCulture)}" : "";
        return CleanText.OneLine((what.Length == 0 || what == name ? name : $"{name}, {what}") + cheque);
    }

    private static string Of(Household household, LedgerEnd end) => end switch
    {
        LedgerEnd.Outside { SourceId: { } source } => EndText.Source(household, source),
        LedgerEnd.Outside { BillId: { } bill } => EndText.Bill(household, bill),
        LedgerEnd.Outside { Kind: OutsideKind.Spending, PotId: { } pot } => EndText.Pot(household, pot),
        LedgerEnd.Outside { Kind: OutsideKind.Spending } => "buffer",
        LedgerEnd.Owed owed => EndText.Debt(household, owed.DebtId),
        var other => EndText.Of(household, other),
    };

    // The ledger's own words where they say more than the kind of line does.
    private static string Words(AccountLine line) => line switch
    {
        { Kind: AccountLineKind.Withdrawal, Payday: { } payday } => $"payday of {DateText.Short(payday)}",
        { Kind: AccountLineKind.Withdrawal or AccountLineKind.Deposit } => line.What is "cash return" or "moved" or "moved on" or "withdrawal" ? "" : line.What,
        { What: "income" or "card purchase" } => "",
        { What: var what } => what,
    };
}
