using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.NotesAtHome;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Lives;

/// <summary>Account entries of every kind, entries of cash, and refunds, as events of a life.</summary>
internal static class Enterings
{
    private static readonly (EntryKind Kind, string For, bool ComesIn, bool IsCash)[] Kinds =
    [
        (EntryKind.Interest, "account/buffer", true, false), (EntryKind.Fee, "account/buffer", false, false), (EntryKind.Gift, "account/left-to-place", true, false),
        (EntryKind.Gift, "cash/pot:food", true, false), (EntryKind.Gift, "cash/pot:food", true, true), (EntryKind.Gift, "cash/buffer", true, true), (EntryKind.Gift, "cash/pot:boots", false, true),
        (EntryKind.Transfer, "account/pot:gifts", true, false), (EntryKind.Transfer, "account/buffer", false, false), (EntryKind.Payment, "account/pot:gifts", false, false),
        (EntryKind.Payment, "account/set-aside:rent", false, false), (EntryKind.Refund, "account/set-aside:rent", true, false), (EntryKind.Income, "account/left-to-place", true, false),
        (EntryKind.Borrowing, "owed/card", true, false), (EntryKind.Fee, "owed/card", false, false), (EntryKind.Interest, "owed/card", false, false),
        (EntryKind.Loss, "cash/pot:food", false, true), (EntryKind.Loss, "cash/buffer", false, true),
    ];

    public static Doing[] All { get; } =
    [
        .. from kind in Kinds select Entry(kind.Kind, kind.For, kind.ComesIn, kind.IsCash),
        .. from pot in (string?[])["food", "gifts", null] select Refund(pot),
        .. from pot in (string?[])["food", "gifts", null] select Refund(pot, "card"),
        new("loose notes counted", (book, chance, today) =>
        {
            Notes counted = PotNotes.Of(book).Loose.With(chance.Next(2) == 0 ? 500 : 1000, chance.Next(4));
            return Doings.Made(book, to => Entering.CountLoose(to, today, counted, "odd"), (from, day) => Entering.Undo(from, from.Weeks.Entries.Length, day));
        }),
    ];

    private static Doing Entry(EntryKind kind, string key, bool comesIn, bool isCash) => new($"{kind} {(comesIn ? "in" : "out")} {key}{(isCash ? " in notes" : "")}", (book, chance, today) =>
    {
        Money most = Money.Min(Usd(25), comesIn ? Usd(25) : MoveEnds.Has(book, LedgerEnd.FromKey(key)));
        Money amount = key.StartsWith("owed", StringComparison.Ordinal) ? Usd(7.35m) : isCash ? most.FloorTo(Usd(5)) : most;
        var wish = new EntryWish(today.PlusDays(-chance.Next(5)), kind, LedgerEnd.FromKey(key), comesIn ? amount : -amount, "what")
        {
            IsCash = isCash,
            Notes = isCash && comesIn ? Doings.Fives(amount) : null,
            Source = kind == EntryKind.Income && chance.Next(2) == 0 ? new SourceId("wage") : null,
            Cheque = kind == EntryKind.Payment ? 118 : null,
        };
        return Doings.Made(book, to => Entering.Enter(to, wish), (from, day) => Entering.Undo(from, from.Weeks.Entries.Length, day));
    });

    private static Doing Refund(string? pot, string? card = null) => new($"refund to {pot ?? "the buffer"}{(card is null ? "" : " by " + card)}", (book, chance, today) =>
    {
        var entry = new PurchaseEntry(today, pot is null ? null : new PotId(pot), Usd(chance.Next(1, 4000) / 100m), "shop") { Card = card is null ? null : new DebtId(card) };
        return Doings.Made(book, to => CardRefunds.Enter(to, entry), (from, day) => Purchasing.Undo(from, from.Weeks.Purchases.Count, day));
    });
}
