using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Pots;
using Payday.Core.Receiving;
using Payday.Core.Reconciling;
using Payday.Core.Routines;
using Payday.Core.StatementTaking;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Lives;

/// <summary>Every kind of event that can be taken back. A new kind is one more line.</summary>
internal static class Doings
{
    private static readonly MoveTarget[] Targets = [MoveTarget.Pot(new PotId("boots")), MoveTarget.Pot(new PotId("gifts")), MoveTarget.Pot(new PotId("fares")), MoveTarget.Debt(new DebtId("card")), MoveTarget.Buffer];

    private static readonly LedgerEnd[] CashEnds = [LedgerEnd.FromKey("cash/pot:food"), LedgerEnd.FromKey("cash/pot:boots"), MoveEnds.Loose];

    private static readonly (string From, string To)[] MoveWays =
    [
        ("account/pot:gifts", "account/buffer"), ("account/buffer", "account/pot:gifts"), ("account/buffer", "account/set-aside:rent"), ("account/buffer", "owed/card"),
        ("account/buffer", "cash/pot:food"), ("account/kept-back:food", "account/buffer"), ("cash/pot:food", "cash/pot:fares"), ("cash/pot:boots", "cash/pot:food"),
        ("cash/pot:fares", "account/pot:gifts"), ("cash/pot:food", "owed/card"), ("cash/pot:boots", "account/set-aside:rent"), ("cash/buffer", "cash/pot:food"),
        ("cash/buffer", "account/buffer"), ("account/buffer", "cash/buffer"), ("account/set-aside:rent", "account/buffer"),
    ];

    /// <summary>Moves, account entries, refunds and counts of the loose notes.</summary>
    public static Doing[] Between { get; } = [.. from way in MoveWays select Move(way.From, way.To), .. Enterings.All];

    public static Doing[] All { get; } =
    [
        Purchase("food"), Purchase("fares"), Purchase("boots"), Purchase("gifts"), Purchase(null),
        Split("food", "gifts"), Split("fares", "boots", null), Split("gifts", null),
        Purchase("food", "card"), Purchase("gifts", "card"), Purchase(null, "loan"), SplitBy("card", ["boots", "food", null]),
        new("changed purchase", ChangedPurchase),
        new("fill done", (book, chance, today) => Fill(book, Pick(chance, WalletFills.Waiting(book, today)), FillState.Done, today)),
        new("fill skipped", (book, chance, today) => Fill(book, Pick(chance, WalletFills.Waiting(book, today)), FillState.Skipped, today)),

        // Its movement is written anew, so it then comes after what moved that pot's cash since; which notes are where is
        // followed in the order of entry, and may not be known any more until the next count by notes.
        new("fill done that was taken as done", (book, chance, today) => Fill(book, Pick(chance, WalletFills.Waiting(book, today).Where(part => part.IsAssumed)), FillState.Done, today)),
        new("fill skipped after all", (book, chance, today) => Fill(
            book,
            Pick(chance, FillPart.Of(book).Where(part => part.Marked is { State: FillState.Done, Movement: { } number } && !MovedSince(book, part.Pot.Id, number)).TakeLast(4)),
            FillState.Skipped,
            today)),
        new("fill done after all", (book, chance, today) => Fill(book, Pick(chance, FillPart.Of(book).Where(part => part.Marked?.State == FillState.Skipped).TakeLast(4)), FillState.Done, today)),
        Count("count", (_, row) => new CountEntry(row.Expected.ClampToZero())),
        Count("count with spending", (chance, row) => new CountEntry(Part(chance, row.Expected))),
        Count("count by notes", (chance, row) => new CountEntry(Usd(0)) { Notes = Fives(Part(chance, row.Expected) + row.StillOwed) }),
        Count("count with a difference", (chance, row) => Part(chance, row.Expected) is var left && row.Expected > left
            ? new CountEntry(left) { Missing = Usd(0.01m), DifferenceName = "odd" }
            : new CountEntry(row.Expected.ClampToZero() + Usd(5)) { IsFind = true, DifferenceName = "odd" }),
        Count("count that moves on", (chance, row) => new CountEntry(Part(chance, row.Expected)) { Then = new CountThen(Targets[chance.Next(Targets.Length)]) }),
        new("difference explained", (book, _, today) => Settle(book, DifferenceEnd.Explained, today)),
        new("difference turned up", (book, _, today) => Settle(book, DifferenceEnd.TurnedUp, today)),
        new("cash return", (book, _, today) => Made(
            book, to => ReturnPlan.Of(to, ReturnDraft.AsPlanned).Confirm(today), (from, day) => ReturnUndo.Of(from, ReturnUndo.Last(from)!, day))),
        Due("due paid", (_, _) => (null, false), isBill: true),
        Due("due paid in part", (chance, due) => (Part(chance, due.Rest), false), isBill: true),
        Due("due paid with more", (_, due) => (due.Rest + Usd(6), false), isBill: true),
        Due("due freed", (chance, due) => (Part(chance, due.Rest), true), isBill: true),
        Due("minimum paid", (_, _) => (null, false), isBill: false),
        Due("minimum paid in part", (chance, due) => (Part(chance, due.Rest), false), isBill: false),
        Due("minimum paid with more", (_, due) => (due.Rest + Usd(40), false), isBill: false),
        Due("minimum waived", (_, _) => (Usd(0), true), isBill: false),
        new("payday", (book, _, _) => Close(book, draft => draft)),
        new("payday with owed-back notes", (book, _, _) => Close(book, draft => draft with { UsesOwedBack = true })),
        .. Between,
        new("other notes", (book, chance, _) => OtherNotes.Of(book, chance) is { } got
            ? Made(book, to => ReceivingPlan.Of(to, got).Then(plan => plan.Confirm(to.LastClosed!.Payday)), ReceivingUndo.Of)
            : null),
        new("reconciliation", Reconcile),
        new("statement", TakeStatement),
        new("one-off income", (book, _, _) => Close(book, draft => draft with { OneOffs = draft.OneOffs.Add("Jumble sale", Usd(35)) })),
    ];

    private static Doing Move(string from, string to) => new($"move {from} {to}", (book, chance, today) =>
    {
        LedgerEnd end = LedgerEnd.FromKey(from);
        Money has = MoveEnds.Has(book, end);
        Money amount = Money.Min(Usd(5 * chance.Next(1, 5)), from.Contains("kept-back", StringComparison.Ordinal) ? has : has.FloorTo(Usd(5)));
        bool fetches = to.StartsWith("cash/buffer", StringComparison.Ordinal) || (to.StartsWith("cash/", StringComparison.Ordinal) && chance.Next(3) == 0);
        var entry = new MoveEntry(
            today.PlusDays(-chance.Next(5)), end, LedgerEnd.FromKey(to), amount, "why", fetches && from.StartsWith("account", StringComparison.Ordinal) ? Fives(amount) : null);
        return Made(book, to => Moving.Enter(to, entry), (back, day) => Moving.Undo(back, back.Weeks.Moves.Length, day));
    });

    private static bool MovedSince(Book book, PotId potId, long number) =>
        new[] { LedgerEnd.InCash(Purpose.Pot(potId)), LedgerEnd.InCash(Purpose.Wallet(potId)), LedgerEnd.InCash(Purpose.OwedBack(potId)) }
            .Any(end => book.Ledger.Of(end).Any(movement => movement.Number > number))
        || book.Weeks.LastCountOf(potId)?.LastMovement > number;

    private static Doing Split(params string?[] pots) => SplitBy(null, pots);

    // Of both signs, as a whole that came back is one too.
    private static Doing SplitBy(string? card, string?[] pots) => new($"purchase from {string.Join(" and ", pots.Select(pot => pot ?? "the buffer"))}{(card is null ? "" : " by " + card)}", (book, chance, today) =>
    {
        int sign = chance.Next(4) == 0 ? -1 : 1;
        PurchasePart[] parts = [.. pots.Select(pot => new PurchasePart(pot is null ? null : new PotId(pot), Cents(sign * chance.Next(1, 1500))))];
        PurchaseEntry entry = new PurchaseEntry(today.PlusDays(-chance.Next(9)), null, Usd(1), "market") { Card = card is null ? null : new DebtId(card) }.With([.. parts]);
        return Made(book, to => Purchasing.Enter(to, entry), (from, day) => Purchasing.Undo(from, from.Weeks.Purchases.Count, day));
    });

    private static Doing Purchase(string? pot, string? card = null) => new($"purchase from {pot ?? "the buffer"}{(card is null ? "" : " by " + card)}", (book, chance, today) =>
    {
        var entry = new PurchaseEntry(today.PlusDays(-chance.Next(9)), pot is null ? null : new PotId(pot), Usd(chance.Next(1, 9000) / 100m), "shop") { Card = card is null ? null : new DebtId(card) };
        return Made(book, to => Purchasing.Enter(to, entry), (from, day) => Purchasing.Undo(from, from.Weeks.Purchases.Count, day));
    });

    // Early, on its day or late, any of the next.
    private static Doing Due(string name, Func<Random, DueLine, (Money? Amount, bool Frees)> what, bool isBill) => new(name, (book, chance, today) =>
    {
        DueLine[] lines = [.. DueLines.Of(book, today.PlusMonths(2)).Where(line => line.Key.Bill is not null == isBill)];
        if (lines.Length == 0)
        {
            return null;
        }

        DueLine due = lines[chance.Next(Math.Min(3, lines.Length))];
        (Money? amount, bool frees) = what(chance, due);
        var entry = new DueEntry(due.Key, today.PlusDays(-chance.Next(4)), amount, frees);
        return Made(book, to => Paying.Enter(to, entry, today), (from, day) => Paying.Undo(from, from.Weeks.Payments.Length, day));
    });

    // Undone, it is as if neither the old nor the new one had been.
    private static Done? ChangedPurchase(Book book, Random chance, LocalDate today)
    {
        if (book.Weeks.StandingPurchases.LastOrDefault() is not { } old)
        {
            return null;
        }

        var entry = new PurchaseEntry(today, new PotId("fares"), Usd(chance.Next(1, 30)), "bus");
        return Purchasing.Change(book, old.Number, entry, today) is { Ok: true } changed
            ? new Done(
                Purchasing.Undo(book, old.Number, today).Value!,
                changed.Value,
                to => Purchasing.Enter(to, entry),
                (from, day) => Purchasing.Undo(from, from.Weeks.Purchases.Count, day))
            : null;
    }

    private static Done? Fill(Book book, FillPart? part, FillState state, LocalDate today) => part is null ? null : Made(
        book, to => WalletFills.Mark(to, part.Key, state, WalletFills.DoneOn(part.Key, today)), (from, day) => WalletFills.Unmark(from, part.Key, day));

    private static Doing Count(string name, Func<Random, CountRow, CountEntry> entry) => new(name, (book, chance, today) =>
    {
        LocalDate date = CountWeeks.Open(book, today) is [var week, ..] ? week.LastDay : today;
        CountDraft draft = CountPlan.Of(book, new CountDraft(date)).Rows
            .Where(_ => chance.Next(4) > 0)
            .Aggregate(new CountDraft(date), (all, row) => all.With(row.Pot.Id, entry(chance, row)));
        CountPlan plan = CountPlan.Of(book, draft);
        draft = draft with { Entries = draft.Entries.RemoveRange(plan.Rows.Where(row => row.Fault is not null).Select(row => row.Pot.Id)) };
        return Made(book, to => CountPlan.Of(to, draft).Confirm(), (from, day) => CountUndo.Of(from, CountUndo.Last(from), day));
    });

    private static Done? Reconcile(Book book, Random chance, LocalDate today)
    {
        ReconciliationPlan plan = ReconciliationPlan.Of(book, new ReconciliationDraft(today, Usd(chance.Next(2000)), []));
        ReconciliationDraft draft = plan.Draft with { AtBank = [.. plan.Lines.Where(_ => chance.Next(2) == 0).Select(line => line.Number)] };
        return Made(book, to => ReconciliationPlan.Of(to, draft).Accept(), (from, _) => ReconciliationUndo.Of(from, ReconciliationUndo.Last(from)!));
    }

    // Some lines that the bank shows, a fee and a purchase that nobody had written down, and a line that is left.
    private static Done? TakeStatement(Book book, Random chance, LocalDate today)
    {
        LineDecision New(decimal amount, string text, LineTarget? target) => new(new TakenLine(today, Usd(amount), "", text), [], target);
        ReconciliationPlan plan = ReconciliationPlan.Of(book, new ReconciliationDraft(today, null, []));
        var wish = new StatementWish(
            [new TakenStatement("77", book.Household.Start, today) { Closing = Usd(chance.Next(2000)) }],
            [
                .. plan.Lines.Where(_ => chance.Next(2) == 0).Select(line => new LineDecision(new TakenLine(line.Date, line.Amount, "", line.What), [line.Number], null)),
                New(-1.25m, "fee", new LineTarget(LineUse.Fee)),
                New(-2.5m, "shop", new LineTarget(LineUse.For, LedgerEnd.InCash(Purpose.Pot(new PotId("food"))))),
                New(12, "aunt", new LineTarget(LineUse.Gift)),
                New(-3.33m, "zorblatt", null),
                .. chance.Next(3) switch
                {
                    0 => [New(-10, "machine", new LineTarget(LineUse.Cash, CashEnds[chance.Next(CashEnds.Length)]))],
                    1 => [New(5, "counter", new LineTarget(LineUse.Cash, CashEnds[chance.Next(CashEnds.Length)]) { Other = LedgerEnd.InAccount(Purpose.Pot(new PotId("gifts"))) })],
                    _ => ReturnPlan.Of(book, ReturnDraft.AsPlanned).Total is { IsPositive: true } owed ? [New(owed.ToDecimal(), "counter", new LineTarget(LineUse.Return))] : Array.Empty<LineDecision>(),
                },
            ]);
        return Made(book, to => StatementBooking.Take(to, wish, today), (from, day) => TakingUndo.Of(from, TakingUndo.Last(from)!, day));
    }

    private static Done? Settle(Book book, DifferenceEnd how, LocalDate today) => Differences.Open(book) is [var open, ..]
        ? Made(book, to => Differences.Settle(to, open.Number, how, today), (from, day) => Differences.Reopen(from, Differences.LastSettled(from)!, day))
        : null;

    private static Done? Close(Book book, Func<RoutineDraft, RoutineDraft> decide)
    {
        RoutineDraft draft = decide(new RoutineDraft(Routine.Next(book).Value));
        return Made(book, to => Routine.Plan(to, draft).Then(Closing.Of), Reopening.Of);
    }

    internal static Done? Made(Book book, Func<Book, Result<Book>> again, Func<Book, LocalDate, Result<Book>> undo) =>
        again(book) is { Ok: true } made ? new Done(book, made.Value, again, undo) : null;

    private static Money Part(Random chance, Money most) => Cents(chance.NextInt64(most.ClampToZero().MinorUnits + 1)).FloorTo(Usd(5));

    internal static Notes? Fives(Money amount) =>
        (amount.MinorUnits % 500) == 0 && amount.IsPositive ? Core.Cash.Notes.Of(500, (int)(amount.MinorUnits / 500)) : Core.Cash.Notes.None;

    private static FillPart? Pick(Random chance, IEnumerable<FillPart> parts) => parts.ToArray() is { Length: > 0 } all ? all[chance.Next(all.Length)] : null;
}
