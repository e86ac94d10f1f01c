using NodaTime;
using Payday.Core.Books;

namespace Payday.Core.BankLines;

/// <summary>Which record each movement of a book belongs to, of those that can move money in and out of the account.</summary>
internal sealed class LineRecords
{
    private readonly LineRecord[] records;

    private LineRecords(LineRecord[] records) => this.records = records;

    public static LineRecords Of(Book book)
    {
        WeekRecords weeks = book.Weeks;
        return new LineRecords(
        [
            .. weeks.StandingPurchases.Select(one => new LineRecord(one.FirstMovement, one.LastMovement, "purchase", one.WholeNumber, one.Date, one.What, null))
                .Concat(weeks.StandingReturns.Where(one => one.Payday is null).Select(one => new LineRecord(one.FirstMovement, one.LastMovement, LineRecord.Deposit, one.Number, one.Date, "", null)))
                .Concat(weeks.StandingPayments.Select(one => new LineRecord(one.FirstMovement, one.LastMovement, "payment", one.Number, one.Date, "", null)))
                .Concat(weeks.StandingMoves.Select(one => new LineRecord(one.FirstMovement, one.LastMovement, "move", one.Number, one.Date, one.Why, null)))
                .Concat(weeks.StandingEntries.Select(one => new LineRecord(one.FirstMovement, one.LastMovement, "entry", one.Number, one.Date, one.What, one.Cheque)))
                .Concat(weeks.StandingReceived.Select(one => new LineRecord(one.FirstMovement, one.LastMovement, LineRecord.Withdrawal, LineRecord.NumberOf(one.Payday), one.Date, "", null)))
                .Where(one => one.Last >= one.First)
                .OrderBy(one => one.First),
        ]);
    }

    /// <summary>The record of a movement; null for none.</summary>
    public LineRecord? this[long movement]
    {
        get
        {
            int low = 0;
            int high = records.Length;
            while (low < high)
            {
                int middle = (low + high) / 2;
                (low, high) = records[middle].First <= movement ? (middle + 1, high) : (low, middle);
            }

            return low > 0 && movement <= records[low - 1].Last ? records[low - 1] : null;
        }
    }
}

/// <summary>A record and its movements.</summary>
internal sealed record LineRecord(long First, long Last, string Sort, long Number, LocalDate Date, string What, long? Cheque)
{
    /// <summary>Cash that a payday fetched: its own movements, and what says that other notes were received.</summary>
    public const string Withdrawal = "withdrawal";

    /// <summary>A cash return; what it pays on a debt is a payment of its own.</summary>
    public const string Deposit = "deposit";

    /// <summary>A payday as a number.</summary>
    public static long NumberOf(LocalDate payday) => (payday.Year * 10_000L) + (payday.Month * 100) + payday.Day;
}
