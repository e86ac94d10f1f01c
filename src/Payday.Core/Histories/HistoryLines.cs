using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Histories;

/// <summary>The lines of a pot's history, from the records and from the ledger where it says more.</summary>
internal static class HistoryLines
{
    public static IEnumerable<PotHistoryLine> Of(Book book, PotId potId) =>
        Openings(book, potId).Concat(Fills(book, potId)).Concat(Wallet(book, potId)).Concat(Cards(book, potId)).Concat(Returns(book, potId)).Concat(Counts(book, potId)).Concat(Moves(book, potId)).Concat(Moved(book, potId)).Concat(Entries(book, potId));

    private static IEnumerable<PotHistoryLine> Openings(Book book, PotId potId) => PotBalance.Ends(potId)
        .SelectMany(book.Ledger.Of)
        .Where(movement => movement.From is LedgerEnd.Outside { Kind: OutsideKind.Opening })
        .OrderBy(movement => movement.Number)
        .Select(movement => new PotHistoryLine(movement.Date, PotEvent.Opening, movement.Amount, null, ""));

    private static IEnumerable<PotHistoryLine> Fills(Book book, PotId potId)
    {
        IEnumerable<Movement> into = [.. book.Ledger.Of(LedgerEnd.InAccount(Purpose.KeptBack(potId))), .. book.Ledger.Of(LedgerEnd.InAccount(Purpose.Pot(potId)))];
        return into
            .Where(movement => movement.From == LedgerEnd.InAccount(Purpose.LeftToPlace))
            .OrderBy(movement => movement.Number)
            .Select(movement => new PotHistoryLine(movement.Date, PotEvent.Fill, movement.Amount, null, movement.Reason));
    }

    private static IEnumerable<PotHistoryLine> Wallet(Book book, PotId potId) => book.Weeks.Fills
        .Where(fill => fill.Key.PotId == potId)
        // The records are in no order: a mark that is taken back and set again stands last.
        .OrderBy(fill => fill.Key.Day).ThenBy(fill => fill.Key.Payday)
        .Select(fill => new PotHistoryLine(fill.Date, fill.State == FillState.Done ? PotEvent.Wallet : PotEvent.Skipped, fill.Amount, null, ""));

    private static IEnumerable<PotHistoryLine> Cards(Book book, PotId potId)
    {
        foreach (CardPurchase purchase in book.Weeks.Purchases.With(PurchaseTraits.Stands, potId))
        {
            yield return new PotHistoryLine(purchase.Date, PotEvent.Card, purchase.Amount, null, purchase.What) { IsBeside = !purchase.OwedBack.IsZero };
            if (!purchase.OwedBack.IsZero)
            {
                yield return new PotHistoryLine(purchase.Date, PotEvent.OwedBack, purchase.OwedBack, null, purchase.What);
            }
        }
    }

    private static IEnumerable<PotHistoryLine> Returns(Book book, PotId potId) =>
        from back in book.Weeks.StandingReturns
        from pot in back.Pots
        where pot.PotId == potId
        select new PotHistoryLine(back.Date, PotEvent.Returned, pot.Amount, null, back.Payday is null ? "" : "used for a withdrawal");

    private static IEnumerable<PotHistoryLine> Counts(Book book, PotId potId)
    {
        foreach (WeekCount count in book.Weeks.Counts.With(CountTraits.Stands, potId))
        {
            yield return new PotHistoryLine(count.Date, PotEvent.Counted, count.Spent, count.Left, "");
            if (!count.Difference.IsZero)
            {
                yield return new PotHistoryLine(count.Date, PotEvent.Difference, -count.Difference, null, count.DifferenceName);
            }
        }

        foreach (SettledDifference settled in book.Weeks.Settled.Where(settled => settled.How == DifferenceEnd.TurnedUp))
        {
            WeekCount count = book.Weeks.Counts[(int)settled.Count - 1];
            if (count.PotId == potId)
            {
                yield return new PotHistoryLine(settled.Date, PotEvent.Difference, count.Difference, null, count.DifferenceName);
            }
        }
    }

    private static IEnumerable<PotHistoryLine> Moves(Book book, PotId potId)
    {
        foreach (WeekCount count in book.Weeks.Counts.With(CountTraits.Stands | CountTraits.MovedOn))
        {
            Movement move = book.Ledger.Movements[(int)count.Move!.Value - 1];
            if (count.PotId == potId)
            {
                yield return new PotHistoryLine(move.Date, PotEvent.Move, -count.Left, null, "to " + (count.MovesOnTo!.NameIn(book.Household) ?? count.MovesOnTo!.IdText));
            }
            else if (count.MovesOnTo == MoveTarget.Pot(potId))
            {
                yield return new PotHistoryLine(move.Date, PotEvent.Move, count.Left, null, "from " + NameOf(book, count.PotId));
            }
        }
    }

    private static IEnumerable<PotHistoryLine> Moved(Book book, PotId potId)
    {
        foreach (Move move in book.Weeks.StandingMoves)
        {
            bool gives = IsOf(move.From, potId);
            if (gives != IsOf(move.To, potId))
            {
                string why = move.Why.Length == 0 ? "" : $": {move.Why}";
                yield return gives
                    ? new PotHistoryLine(move.Date, PotEvent.Move, -move.Amount, null, $"to {NameOf(book, move.To)}{why}")
                    : new PotHistoryLine(move.Date, PotEvent.Move, move.Amount, null, $"from {NameOf(book, move.From)}{why}");
            }
        }
    }

    private static IEnumerable<PotHistoryLine> Entries(Book book, PotId potId) => book.Weeks.StandingEntries
        .Where(entry => IsOf(entry.For, potId))
        .Select(entry => new PotHistoryLine(entry.Date, PotEvent.Entry, entry.Amount, null, entry.What));

    private static bool IsOf(LedgerEnd end, PotId potId) => end is LedgerEnd.At held && held.Purpose.PotId == potId;

    private static string NameOf(Book book, LedgerEnd end) => LedgerEnds.NameIn(book.Household, end)
        ?? (end == LedgerEnd.InCash(Purpose.Buffer) ? "loose notes" : "the buffer");

    private static string NameOf(Book book, PotId potId) => book.Household.Pots.FirstOrDefault(pot => pot.Id == potId)?.Name ?? potId.Text;
}
