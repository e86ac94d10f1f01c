using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Fills;

/// <summary>Fills of the wallet that nobody has said are done, though what was bought, moved or lost since took of them.</summary>
/// <remarks>
/// What leaves a pot takes up the fills whose day has come (<see cref="WalletFills.TakeUp"/>), so that it comes off its own
/// week's part. That is right for the sums, and says nothing of the wallet: who pays by card on the fill day has yet to fill it.
/// So such a fill waits until a person marks it, or a count of the pot takes it as done; marking it moves nothing. Which
/// ones they are follows from <see cref="TakenUp"/> of the records that stand, so an undo leaves nothing of it.
/// </remarks>
internal static class AssumedFills
{
    /// <summary>All of them, in no order.</summary>
    public static ImmutableArray<FillPart> Of(Book book)
    {
        ImmutableHashSet<FillKey> keys = Keys(book);
        return keys.IsEmpty
            ? []
            : Marked(book, book.Household.Pots.Where(pot => FillPart.GoesThroughTheWallet(pot) && keys.Any(key => key.PotId == pot.Id))
                .SelectMany(pot => FillPart.Of(book, pot, [.. keys])), keys);
    }

    /// <summary>Parts with those of them marked as such.</summary>
    public static ImmutableArray<FillPart> Marked(Book book, IEnumerable<FillPart> parts) => Marked(book, parts, Keys(book));

    /// <summary>The book once a person says that such a fill is done; null where it isn't one.</summary>
    public static Book? Confirmed(Book book, FillPart part) => part.Marked is { } mark && Keys(book).Contains(part.Key)
        ? Put(book, mark with { Before = mark with { Before = null } })
        : null;

    /// <summary>The book once that is taken back, while what took it as done stands; null where nobody said so.</summary>
    public static Book? Reopened(Book book, FillKey key) =>
        book.Weeks.Fills.FirstOrDefault(fill => fill.Key == key) is { IsConfirmed: true, Before: { } before }
        && Put(book, before) is var reopened && Keys(reopened).Contains(key)
            ? reopened
            : null;

    private static ImmutableArray<FillPart> Marked(Book book, IEnumerable<FillPart> parts, ImmutableHashSet<FillKey> keys)
    {
        var marked = ImmutableArray.CreateBuilder<FillPart>();
        var promised = new Dictionary<Pot, Money>();
        foreach (FillPart part in parts)
        {
            if (!keys.Contains(part.Key))
            {
                marked.Add(part);
                continue;
            }

            Money before = promised.GetValueOrDefault(part.Pot, Money.Zero(part.Amount.Currency));
            Money left = Money.Min(part.Marked!.Amount, (book.Ledger.Balances[WalletFills.Wallet(part.Pot)] - before).ClampToZero());
            promised[part.Pot] = before + left;
            marked.Add(part with { IsAssumed = true, Moves = left });
        }

        return marked.ToImmutable();
    }

    // Few, however long the household has been at it: a count ends them.
    private static ImmutableHashSet<FillKey> Keys(Book book)
    {
        WeekRecords weeks = book.Weeks;
        Dictionary<PotId, LocalDate?> counted = [];
        WalletFill[] open = [.. weeks.Fills.Where(fill => fill is { State: FillState.Done, IsConfirmed: false } && !(LastCount(fill.Key.PotId) >= fill.Key.Day))];
        if (open is [])
        {
            return [];
        }

        // What took one of them up was entered once its payday was closed, which can't be reopened while that stands.
        LocalDate payday = open.Min(fill => fill.Key.Payday);
        long closed = book.Closed.LastOrDefault(closed => closed.Payday == payday)?.LastMovement ?? 0;
        FillKey[] taken =
        [
            .. weeks.Purchases.Latest(PurchaseTraits.Stands | PurchaseTraits.TookUpFills).TakeWhile(one => one.FirstMovement > closed).SelectMany(one => one.TakenUp.Fills),
            .. weeks.StandingMoves.SelectMany(one => one.TakenUp.Fills),
            .. weeks.StandingEntries.SelectMany(one => one.TakenUp.Fills),
        ];
        return [.. open.Select(fill => fill.Key).Intersect(taken)];

        LocalDate? LastCount(PotId pot)
        {
            if (!counted.TryGetValue(pot, out LocalDate? day))
            {
                counted[pot] = day = weeks.LastCountOf(pot)?.Date;
            }

            return day;
        }
    }

    private static Book Put(Book book, WalletFill mark) => book with
    {
        Weeks = book.Weeks with { Fills = [.. book.Weeks.Fills.Select(known => known.Key == mark.Key ? mark : known)] },
    };
}
