using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Routines;

namespace Payday.Reports;

/// <summary>What of a cash pot no notes bring, said with its amount and why.</summary>
internal static class NotInNotesText
{
    /// <summary>E.g. <c>1.40 of Fares is not in notes: the least is 5; it waits in the account.</c>; empty where all of it is.</summary>
    public static string Of(RoutinePlan plan, CashPotRow row, NumberStyle style)
    {
        if (!row.KeptBack.IsPositive)
        {
            return "";
        }

        Money least = LeastNote(plan);
        string why = row.KeptBack < least ? $": the least is {NoteText.Value(least.MinorUnits, least.Currency, style)}" : "";
        return $"{row.KeptBack.ToString(style)} of {row.Pot.Name} is not in notes{why}; it waits in the account.";
    }

    /// <summary>The same of the first pot that it is so with: the words are explained once.</summary>
    public static string First(RoutinePlan plan, NumberStyle style) =>
        plan.Withdrawal.Pots.Select(row => Of(plan, row, style)).FirstOrDefault(text => text.Length > 0, "");

    // Notes at home may be smaller, but the bank can't be asked for them.
    private static Money LeastNote(RoutinePlan plan) =>
        plan.Draft.BankFor(plan.Book.Household.Settings.Bank) is CashSource.Machine machine
            ? machine.Notes.MinBy(note => note.MinorUnits)
            : plan.Book.Household.Settings.Cash.SmallestNote;
}
