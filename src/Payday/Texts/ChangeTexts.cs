using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.HouseholdChanges;

namespace Payday.Texts;

/// <summary>What is said of a changed household that can't take the place of the one in the book.</summary>
internal static class ChangeTexts
{
    /// <summary>One sentence to a person on a form.</summary>
    public static string Of(ChangeFault fault, NumberStyle style) => fault switch
    {
        ChangeFault.OtherCurrency other => $"The ledger is in {other.Ledger}, so the household stays in it; begin one in {other.Next} in another folder.",
        ChangeFault.OtherStart other => $"The household started on {other.Start:uuuu-MM-dd} and has a history since; that date stays as it is.",
        ChangeFault.DebtOwed debt => $"{debt.Owed.ToString(style)} is still owed on {debt.Debt}; keep it.",
        ChangeFault.DebtHeld debt => $"{debt.Held.ToString(style)} waits in the account for {debt.Debt}; keep it until the next payday has placed that.",
        ChangeFault.BillHeld bill => $"{bill.Held.ToString(style)} is set aside for {bill.Bill}; end it with a date instead.",
        ChangeFault.PotHas pot => $"{pot.Pot} has {pot.Has.ToString(style)}; keep it, and leave it where it is.",
        ChangeFault.PotOwes pot => $"{pot.Pot} has {pot.Owed.ToString(style)} to pay back; return it to the account first.",
        ChangeFault.OnItsWay way => $"{way.Amount.ToString(style)} is on its way to {way.Name}; return it to the account first.",
        ChangeFault.OtherOpening => "Opening balances are part of the ledger once a payday is closed or a pot counted; leave them as they were.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>One sentence to a person with a file, where it isn't the same as on a form.</summary>
    public static string InAFile(Fault fault, NumberStyle style) => fault switch
    {
        ChangeFault.OtherCurrency other => $"The ledger is in {other.Ledger}, the file in {other.Next}. Import it into another folder with --data.",
        ChangeFault.OtherStart other => $"The household started on {other.Start:uuuu-MM-dd} and has a history since; leave \"start\" as it is.",
        ChangeFault.DebtOwed debt => $"{debt.Owed.ToString(style)} is still owed on {debt.Debt} (id {debt.DebtId}); keep it in the file.",
        ChangeFault.DebtHeld debt => $"{debt.Held.ToString(style)} waits in the account for {debt.Debt} (id {debt.DebtId}); keep it in the file until the next payday has placed that.",
        ChangeFault.BillHeld bill => $"{bill.Held.ToString(style)} is set aside for {bill.Bill} (id {bill.BillId}); keep it in the file, with an \"until\" date.",
        ChangeFault.PotHas pot => $"{pot.Pot} (id {pot.PotId}) has {pot.Has.ToString(style)}; keep it in the file, \"held\" as before.",
        ChangeFault.PotOwes pot => $"{pot.Pot} (id {pot.PotId}) has {pot.Owed.ToString(style)} to pay back; return it to the account first.",
        ChangeFault.OnItsWay way => $"{way.Amount.ToString(style)} is on its way to {way.Name} (id {way.Id}); return it to the account first.",
        _ => FaultTexts.Of(fault, style),
    };
}
