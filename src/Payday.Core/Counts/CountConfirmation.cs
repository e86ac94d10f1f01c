using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Counts;

/// <summary>Writes a count: first what every pot spent, then what moves on.</summary>
internal static class CountConfirmation
{
    public static Result<Book> Of(CountPlan plan)
    {
        var writer = new WeekWriter(plan.Book);
        CountRow[] rows = [.. plan.Rows.Where(row => row.Entry is not null)];
        int first = plan.Book.Weeks.Counts.Count;
        var fills = new List<WalletFill>();
        var counts = new List<WeekCount>();
        foreach (CountRow row in rows)
        {
            ToTakeUp taken = row.ToTakeUp.From(writer.Next);
            fills.AddRange(taken.Fills);
            counts.Add(Count(writer, plan, row, taken, first + counts.Count + 1) with { Together = first + 1 });
        }

        writer.Record(weeks => weeks.With(fills) with { Counts = weeks.Counts.Add([.. counts]) });

        // Last, so that no pot is expected to have what another gave it a moment ago.
        for (int i = 0; i < rows.Length; i++)
        {
            if (rows[i] is { MovesOnTo: { } target, Left.IsPositive: true } && MoveOn(writer, plan, rows[i], target, first + i) is { } fault)
            {
                return Result.Refused<Book>(fault);
            }
        }

        writer.Record(weeks => weeks with { Draft = null });
        return Result.Of(writer.Book);
    }

    private static WeekCount Count(WeekWriter writer, CountPlan plan, CountRow row, ToTakeUp taken, long number)
    {
        long first = writer.Next;
        LocalDate date = plan.Draft.Date;
        LedgerEnd counted = WalletFills.SpentFrom(row.Pot);
        var lost = LedgerEnd.MissedIn(row.Pot.Id);
        string name = row.Difference.IsZero ? "" : row.Entry!.DifferenceName.Trim();
        writer.Add(taken.Movements);
        writer.Move(date, counted, LedgerEnd.SpentFrom(row.Pot.Id), row.Spent, "spent, counted");
        writer.Move(date, counted, lost, row.Difference.ClampToZero(), $"missing: {name}");
        writer.Move(date, lost, counted, (-row.Difference).ClampToZero(), $"found: {name}");
        return new WeekCount(
            number, date, plan.Week, row.Pot.Id, row.Since, row.Before, row.Filled, row.OwedBack, row.Moved,
            row.Left, row.Entry!.Notes, row.Spent, row.Difference, name, row.MovesOnTo, first, writer.Last, null)
        {
            TakenUp = taken.Taken,
        };
    }

    private static CountFault? MoveOn(WeekWriter writer, CountPlan plan, CountRow row, MoveTarget target, int index)
    {
        Pot? pot = target is MoveTarget.ToPot next ? plan.Book.Household.Pots.Single(pot => pot.Id == next.Id) : null;
        LedgerEnd from = WalletFills.SpentFrom(row.Pot);
        LedgerEnd to = pot is { Place: Place.Cash } ? WalletFills.SpentFrom(pot) : LedgerEnd.InCash(Purpose.OwedBack(row.Pot.Id));

        // The target may have been counted for a later day already; that count stays as it was.
        LocalDate day = pot is not null && writer.Book.Weeks.LastCountOf(pot.Id)?.Date is { } later && later > plan.Draft.Date ? later : plan.Draft.Date;
        if (EndCourse.Of(writer.Book.Ledger, from).LeastFrom(day) < row.Left)
        {
            return new CountFault.LeftUsedSince(row.Pot.Name, plan.Draft.Date);
        }

        long move = writer.Move(day, from, to, row.Left, $"goes to {target.NameIn(plan.Book.Household)}")!.Value;
        writer.Record(weeks => weeks with { Counts = weeks.Counts.Put(weeks.Counts[index] with { Move = move }) });
        return null;
    }
}
