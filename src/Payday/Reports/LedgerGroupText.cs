using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Histories;
using Payday.Core.Ledgers;
using Payday.Core.Undo;
using Payday.Text;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>What was done, in a line of the ledger.</summary>
internal static class LedgerGroupText
{
    /// <summary>E.g. <c>Payday of 6 Mar: 2,287.64 in, 750.00 withdrawn</c>.</summary>
    public static string Of(Book book, LedgerGroup group) => CleanText.OneLine(group switch
    {
        { Kind: LedgerGroupKind.Opening } => "Opening balances",
        { Kind: LedgerGroupKind.Undone } => "Undone: " + Reason(group),
        { Kind: LedgerGroupKind.Alone } => $"{EndText.Of(book.Household, group.Movements[0].From)} to {EndText.Of(book.Household, group.Movements[0].To)}",
        { Entry: BookEntry.Payday } => Payday(book, group),
        { Entry: BookEntry.Purchase purchase } => Purchase(book, book.Weeks.PartsOf(purchase.Number)),
        { Entry: BookEntry.Fill } => $"Wallet filled: {Pots(book, group)}",
        { Entry: BookEntry.Count } => $"Counted: {Pots(book, group)}",
        { Entry: BookEntry.Return } => "Cash brought to the bank",
        { Entry: BookEntry.Entered { IsCount: false } entered } => Entered(book, book.Weeks.Entries[(int)entered.Number - 1]),
        { Entry: BookEntry.Moved moved } => Moved(book, book.Weeks.Moves[(int)moved.Number - 1]),
        { Entry: { } entry } => Upper(UndoTexts.Name(entry)),
        _ => "",
    });

    /// <summary>The amount that says most of it: of a count what was spent, of the rest what moved; null where its text has the amounts, or there is none.</summary>
    public static Money? Amount(Book book, LedgerGroup group)
    {
        Currency currency = book.Household.Currency;
        return group switch
        {
            { Kind: LedgerGroupKind.Opening or LedgerGroupKind.Undone or LedgerGroupKind.Payday } => null,
            { Kind: LedgerGroupKind.Alone } => group.Movements[0].Amount,
            { Entry: BookEntry.Purchase purchase } => Money.Sum(book.Weeks.PartsOf(purchase.Number).Select(part => part.Amount), currency),
            { Entry: BookEntry.Count } => Money.Sum(group.Movements.Where(movement => movement.To is LedgerEnd.Outside { Kind: OutsideKind.Spending }).Select(movement => movement.Amount), currency),
            { Entry: BookEntry.Return } => Money.Sum(group.Movements.Where(movement => IsIn(movement.From, Place.Cash) && IsIn(movement.To, Place.Account)).Select(movement => movement.Amount), currency),
            { Entry: BookEntry.Fill } => Money.Sum(group.Movements.Select(movement => movement.Amount), currency),
            _ => Largest(group),
        };
    }

    private static string Payday(Book book, LedgerGroup group)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        Money Sum(Func<Movement, bool> which) => Money.Sum(group.Movements.Where(which).Select(movement => movement.Amount), book.Household.Currency);
        Money came = Sum(movement => movement.From is LedgerEnd.Outside { Kind: OutsideKind.Source });
        Money fetched = Sum(movement => IsIn(movement.From, Place.Account) && IsIn(movement.To, Place.Cash));
        string[] parts = [$"{came.ToString(style)} in", .. fetched.IsZero ? Array.Empty<string>() : [$"{fetched.ToString(style)} withdrawn"]];
        return $"Payday of {DateText.Short(group.Date)}: {string.Join(", ", parts)}";
    }

    // In its own words: a number says nothing to who wrote it down as a fee.
    private static string Entered(Book book, AccountEntry entry) =>
        $"{Upper(EntryText.Kind(entry))}, {PurposeNames.Of(book.Household, entry.For)}{(entry.What.Length == 0 ? "" : ": " + entry.What)}";

    private static string Moved(Book book, Move move) =>
        $"Moved, {PurposeNames.Of(book.Household, move.From)} to {PurposeNames.Of(book.Household, move.To)}{(move.Why.Length == 0 ? "" : ": " + move.Why)}";

    private static string Purchase(Book book, ImmutableArray<CardPurchase> parts) =>
        $"{parts.Select(part => WeekText.PotName(book, part.PotId)).InWords()}, {(parts[0].IsRefund ? "refund" : $"by {(parts[0].Card is { } card ? EndText.Debt(book.Household, card) : "card")}")}"
        + $"{(parts[0].What.Length == 0 ? "" : ": " + parts[0].What)}";

    // In the household's order of their first movements.
    private static string Pots(Book book, LedgerGroup group) => group.Movements
        .SelectMany(movement => new[] { movement.From, movement.To })
        .OfType<LedgerEnd.At>()
        .Where(end => end.Place == Place.Cash && end.Purpose.Kind is PurposeKind.Pot or PurposeKind.Wallet)
        .Select(end => end.Purpose.PotId)
        .OfType<Core.Ids.PotId>()
        .Distinct()
        .Select(id => EndText.Pot(book.Household, id))
        .InWords();

    private static string Reason(LedgerGroup group)
    {
        Movement undid = group.Movements.First(movement => movement.Reverses is not null);
        Movement was = group.Movements[0];
        return undid.Reason.Length == 0 ? was.Reason : was.Reason.Length == 0 || was.Payday is not null ? undid.Reason : $"{was.Reason} ({undid.Reason})";
    }

    private static Money Largest(LedgerGroup group) => group.Movements.Max(movement => movement.Amount);

    private static bool IsIn(LedgerEnd end, Place place) => end is LedgerEnd.At held && held.Place == place;

    private static string Upper(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
