using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.AccountEntries;
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
using Payday.Core.Moves;
using Payday.Core.Pots;
using Payday.Core.Receiving;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Lives;

/// <summary>A household that does everything there is to do between paydays, at the whim of a seed.</summary>
internal sealed class FiveYears(Book book, int seed)
{
    private static readonly PotId?[] Spent = [new("food"), new("food"), new("fares"), new("boots"), new("gifts"), null];
    private static readonly MoveTarget[] Targets = [MoveTarget.Pot(new PotId("boots")), MoveTarget.Pot(new PotId("gifts")), MoveTarget.Pot(new PotId("fares")), MoveTarget.Debt(new DebtId("card")), MoveTarget.Buffer];
    private readonly Random random = new(seed);

    // Of its own, so that lives go on as they did before there were payments.
    private readonly Random dues = new(seed + 1);

    // Likewise before there were purchases over several pots, and cards that are debts.
    private readonly Random cards = new(seed + 2);

    public Book Book { get; private set; } = book;

    /// <summary>How often each thing was done, and how often it was refused.</summary>
    public SortedDictionary<string, int> Done { get; } = new(StringComparer.Ordinal);

    /// <summary>Goes on with another book, in which something was done that this life doesn't do itself.</summary>
    public void Become(Book other) => Book = other;

    /// <summary>Lives a day; <paramref name="check"/> sees the book after every event.</summary>
    public void Live(LocalDate today, Action<Book> check)
    {
        if (Routine.Next(Book).Value is var payday && payday <= today && Chance(80))
        {
            Try("payday", Close(payday), check);
            if (Chance(30) && OtherNotes.Of(Book, random) is { } got)
            {
                Try("other notes", ReceivingPlan.Of(Book, got).Then(plan => plan.Confirm(payday)), check);
            }

            if (Chance(10) && ReceivingUndo.Last(Book) is not null)
            {
                Try("other notes taken back", ReceivingUndo.Of(Book, today), check);
            }
        }

        // Some late, when their week is over and they wait no more.
        foreach (FillPart part in FillPart.Of(Book).Where(part => part.Marked is null && part.Key.Day <= today && Chance(30)))
        {
            Try("fill", WalletFills.Mark(Book, part.Key, Chance(80) ? FillState.Done : FillState.Skipped, today), check);
        }

        if (Chance(2) && Pick(FillPart.Of(Book).TakeLast(8)) is { Marked: not null } marked)
        {
            Try("mark again", WalletFills.Mark(Book, marked.Key, marked.Marked!.State == FillState.Done ? FillState.Skipped : FillState.Done, today), check);
        }

        if (Chance(25))
        {
            var entry = new PurchaseEntry(today.PlusDays(-random.Next(9)), Spent[random.Next(Spent.Length)], Cents(random.Next(1, 3500)), "shop");
            Try("purchase", Purchasing.Enter(Book, entry), check);
        }

        if (cards.Next(100) < 12)
        {
            PotId?[] pots = [.. Spent.Distinct().OrderBy(_ => cards.Next()).Take(cards.Next(1, 4))];
            int sign = cards.Next(5) == 0 ? -1 : 1;
            PurchaseEntry entry = new PurchaseEntry(today.PlusDays(-cards.Next(9)), null, Usd(1), "market") { Card = cards.Next(2) == 0 ? new DebtId("card") : null }
                .With([.. pots.Select(pot => new PurchasePart(pot, Cents(sign * cards.Next(1, 2000))))]);
            Try(entry.Card is null ? "split" : "by a debt's card", Purchasing.Enter(Book, entry), check);
        }

        if (cards.Next(100) < 4)
        {
            Try("split undone", Purchasing.Undo(Book, Book.Weeks.Purchases.Count - cards.Next(6), today), check);
        }

        if (Chance(4))
        {
            Try("undo", Purchasing.Undo(Book, Book.Weeks.Purchases.Count - random.Next(6), today), check);
        }

        // What is done between paydays beside that: moves, account entries, refunds, loose notes counted.
        if (Chance(12) && Doings.Between[random.Next(Doings.Between.Length)] is var between && between.Do(Book, random, today) is { } event1)
        {
            Try(between.Name.StartsWith("move", StringComparison.Ordinal) ? "move" : "entry", Result.Of(event1.Book), check);
        }

        if (Chance(4) && Book.Weeks.Moves.Length > 0)
        {
            Try("move taken back", Moving.Undo(Book, Math.Max(1, Book.Weeks.Moves.Length - random.Next(4)), today), check);
        }

        if (Chance(4) && Book.Weeks.Entries.Length > 0)
        {
            Try("entry taken back", Entering.Undo(Book, Math.Max(1, Book.Weeks.Entries.Length - random.Next(4)), today), check);
        }

        foreach (OpenWeek week in CountWeeks.Open(Book, today).Where(_ => Chance(40)))
        {
            // In order: a later week is only counted here when this one is done with.
            Try("count", Count(week.LastDay).Confirm(), check);
        }

        if (Chance(5))
        {
            Try("count today", Count(today).Confirm(), check);
        }

        if (Chance(3) && Pick(Differences.Open(Book)) is { } open)
        {
            Try("settle", Differences.Settle(Book, open.Number, Chance(50) ? DifferenceEnd.Explained : DifferenceEnd.TurnedUp, today), check);
        }

        if (Chance(1) && CountUndo.Last(Book) is { IsEmpty: false } counts)
        {
            Try("count taken back", CountUndo.Of(Book, counts, today), check);
        }

        if (Chance(5) && ReturnUndo.Last(Book) is { } back)
        {
            Try("return taken back", ReturnUndo.Of(Book, back, today), check);
        }

        if (Chance(2) && Pick(Book.Weeks.Fills.TakeLast(3)) is { } mark)
        {
            Try("fill taken back", WalletFills.Unmark(Book, mark.Key, today), check);
        }

        if (Chance(2) && Differences.LastSettled(Book) is { } settled)
        {
            Try("settled taken back", Differences.Reopen(Book, settled, today), check);
        }

        if (dues.Next(100) < 12 && DueLines.Of(Book, today.PlusDays(25)) is { IsEmpty: false } open1)
        {
            DueLine due = open1[dues.Next(open1.Length)];
            Money? amount = dues.Next(3) switch { 0 => null, 1 => Cents(dues.NextInt64(due.Rest.MinorUnits + 1)), _ => due.Rest + Usd(3) };
            Try("due", Paying.Enter(Book, new DueEntry(due.Key, today.PlusDays(-dues.Next(5)), amount, FreesRest: dues.Next(6) == 0), today), check);
        }

        if (dues.Next(100) < 3 && Book.Weeks.Payments.Length > 0)
        {
            Try("due undone", Paying.Undo(Book, Book.Weeks.Payments.Length - dues.Next(3), today), check);
        }

        if (Chance(6))
        {
            ReturnDraft draft = ReturnDraft.AsPlanned with { Leaves = Chance(20) ? ReturnDraft.AsPlanned.Leaves.Add(new PotId("food")) : ReturnDraft.AsPlanned.Leaves };
            Try("return", ReturnPlan.Of(Book, draft).Confirm(today), check);
        }
    }

    private Result<Book> Close(LocalDate payday)
    {
        var draft = new RoutineDraft(payday) { UsesOwedBack = Chance(60), LeavesNotesAtHome = Chance(10) };
        Result<RoutinePlan> plan = Routine.Plan(Book, draft);
        if (plan.Ok && !plan.Value.Income.Overdraft.Owed.IsZero && (plan.Value.LeftToPlace.IsNegative || dues.Next(3) == 0))
        {
            // Not all of it has to be paid off at once, and where the day falls short it isn't.
            draft = draft with { ToOverdraft = plan.Value.LeftToPlace.IsNegative ? (plan.Value.Income.Overdraft.Amount + plan.Value.LeftToPlace).ClampToZero() : Cents(dues.NextInt64(plan.Value.Income.Overdraft.Amount.MinorUnits + 1)) };
            plan = Routine.Plan(Book, draft);
        }

        if (plan.Ok && plan.Value.LeftToPlace.IsNegative)
        {
            plan = Routine.Plan(Book, draft with { OneOffs = draft.OneOffs.Add("Help", -plan.Value.LeftToPlace) });
        }

        return Closing.Of(plan.Value!);
    }

    private CountPlan Count(LocalDate date)
    {
        var draft = new CountDraft(date);
        foreach (CountRow row in CountPlan.Of(Book, draft).Rows.Where(_ => Chance(85)))
        {
            draft = draft.With(row.Pot.Id, Entry(row));
        }

        // What was entered so far can be put away and taken up again.
        CountPlan plan = CountPlan.Of(Book, draft);
        return CountPlan.Of(Book, draft with { Entries = draft.Entries.RemoveRange(plan.Rows.Where(row => row.Fault is not null).Select(row => row.Pot.Id)) });
    }

    private CountEntry Entry(CountRow row)
    {
        Money left = Cents(random.NextInt64(Math.Max(0, row.Expected.MinorUnits) + 1)).FloorTo(Usd(5));
        var entry = new CountEntry(left)
        {
            Notes = Chance(60) ? Whole(left + row.StillOwed) : null,
            Missing = Chance(5) ? Money.Min(Usd(5), (row.Expected - left).ClampToZero()) : Usd(0),
            DifferenceName = "odd",
            Then = Chance(20) ? new CountThen(Targets[random.Next(Targets.Length)]) : null,
        };
        return Chance(3) ? entry with { Left = row.Expected + Usd(5), Notes = null, IsFind = true, Missing = Usd(0) } : entry;
    }

    private Notes? Whole(Money amount)
    {
        Notes notes = Notes.None;
        long largest = Chance(50) ? 2000 : Chance(50) ? 1000 : 500;
        foreach (long value in new long[] { 2000, 1000, 500 }.Where(value => value <= largest))
        {
            int count = (int)(amount.MinorUnits / value);
            notes = notes.With(value, count);
            amount -= Cents(value * count);
        }

        return amount.IsZero ? notes : null;
    }

    private void Try(string what, Result<Book> tried, Action<Book> check)
    {
        string key = tried.Ok ? what : what + " refused";
        Done[key] = Done.GetValueOrDefault(key) + 1;
        if (!tried.Ok)
        {
            Assert.EndsWith(".", tried.Fault.Said(), StringComparison.Ordinal);
            return;
        }

        Book = tried.Value;
        check(Book);
    }

    private T? Pick<T>(IEnumerable<T> things) => things.ToArray() is { Length: > 0 } all ? all[random.Next(all.Length)] : default;

    private bool Chance(int percent) => random.Next(100) < percent;
}
