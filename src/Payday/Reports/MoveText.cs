using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Moves;

namespace Payday.Reports;

/// <summary>What a move does, in sentences, before it is written and once it is.</summary>
internal static class MoveText
{
    /// <summary>Both balances, the notes, and what is owed back or to be fetched.</summary>
    public static IEnumerable<string> Of(Household household, MoveEntry entry, MoveEffect effect)
    {
        NumberStyle style = household.Settings.Numbers;
        string to = PurposeNames.Of(household, entry.To);
        string from = $"{PurposeNames.Of(household, entry.From)} {effect.FromAfter.ToString(style)} (now {effect.FromBefore.ToString(style)})";
        string then = entry.To is LedgerEnd.Owed
            ? $"{effect.ToAfter.ToString(style)} owed on {to} (now {effect.ToBefore.ToString(style)})"
            : $"{to} {effect.ToAfter.ToString(style)} (now {effect.ToBefore.ToString(style)})";
        yield return effect.Way == MoveWay.OwedBack ? $"Then: {from}." : $"Then: {from}; {then}.";
        string amount = entry.Amount.ToString(style);
        yield return effect.Way switch
        {
            MoveWay.InAccount => "Nothing to fetch or take to the bank.",
            MoveWay.InCash => effect.Notes is { } notes ? $"From one to the other: {Notes(household, notes)}." : $"Put {amount} from one to the other; which notes isn't known.",
            MoveWay.OwedBack => $"{amount} in cash to pay back: {to} gets it when it is at the bank (r, or payday return).",
            MoveWay.NextWithdrawal => $"{amount} waits in the account, not in notes yet; the next withdrawal brings it. With notes named it counts as fetched.",
            MoveWay.Fetched => $"Fetched from the bank: {Notes(household, effect.Notes ?? Core.Cash.Notes.None)}.",
            _ => $"Taken to the bank: {Notes(household, effect.Notes ?? Core.Cash.Notes.None)}.",
        };
    }

    /// <summary>A move that was entered, in one line.</summary>
    public static string Of(Book book, Move move) =>
        $"{move.Amount.ToString(book.Household.Settings.Numbers)} from {PurposeNames.Of(book.Household, move.From)} to {PurposeNames.Of(book.Household, move.To)}{(move.Why.Length == 0 ? "" : ", " + move.Why)}";

    private static string Notes(Household household, Notes notes) => NoteText.Listed(notes, household.Currency, household.Settings.Numbers);
}
