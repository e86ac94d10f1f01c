using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.CashReturns;

/// <summary>Writes a cash return piece by piece, each piece knowing what the ones before it settled.</summary>
internal sealed class ReturnWriter
{
    private readonly WeekWriter writer;
    private readonly int index;
    private CashReturn record;

    public ReturnWriter(WeekWriter writer, LocalDate date, LocalDate? payday)
    {
        this.writer = writer;
        index = writer.Book.Weeks.Returns.Length;
        record = new CashReturn(index + 1, date, payday, [], [], [], writer.Next, writer.Last);
        writer.Record(weeks => weeks with { Returns = weeks.Returns.Add(record) });
    }

    /// <summary>Settles an amount that a pot owes.</summary>
    /// <param name="potId">The pot.</param>
    /// <param name="amount">No more than it owes.</param>
    /// <param name="notes">The notes it gives, or null where they are not known.</param>
    /// <param name="from">Where the account's money comes from.</param>
    public void Settle(PotId potId, Money amount, ImmutableSortedDictionary<long, int>? notes, LedgerEnd from)
    {
        ImmutableArray<SettledItem> settles = OwedItems.Settle(writer, record.Date, potId, amount, from, record.Payday);
        int known = record.Pots.ToList().FindIndex(pot => pot.PotId == potId);
        ReturnedPot given = known < 0
            ? new ReturnedPot(potId, amount, notes)
            : new ReturnedPot(
                potId,
                record.Pots[known].Amount + amount,
                notes is not null && record.Pots[known].Notes is { } there ? NoteBag.Plus(there, notes) : null);
        record = record with
        {
            Pots = known < 0 ? record.Pots.Add(given) : record.Pots.SetItem(known, given),
            Settles = [.. record.Settles, .. settles],
            LastMovement = writer.Last,
        };
        Write();
    }

    /// <summary>Keeps what was swapped.</summary>
    public void Finish(ImmutableArray<NoteSwap> swaps)
    {
        record = record with { Swaps = swaps };
        Write();
    }

    private void Write() => writer.Record(weeks => weeks with { Returns = weeks.Returns.SetItem(index, record) });
}
