using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Fills;

/// <summary>
/// What should be in a pot's wallet by a day, to be taken as being there: fills that were not marked, and whatever its
/// envelope holds that waits for no fill, such as what it began with.
/// </summary>
/// <param name="Movements">Its movements, numbered from where they would be written.</param>
/// <param name="Fills">The fills that they mark done.</param>
/// <remarks>It is about ends of that pot alone, so that writing it for others before changes only the numbers.</remarks>
internal sealed record ToTakeUp(ImmutableArray<Movement> Movements, ImmutableArray<WalletFill> Fills)
{
    /// <summary>Nothing.</summary>
    public static ToTakeUp Nothing { get; } = new([], []);

    /// <summary>What it will have been.</summary>
    public TakenUp Taken => this is { Movements: [], Fills: [] } ? TakenUp.Nothing : new([.. Fills.Select(fill => fill.Key)], [.. Movements.Select(movement => movement.Number)]);

    /// <summary>Works it out.</summary>
    public static ToTakeUp Of(Book book, Pot pot, LocalDate date)
    {
        Money nothing = Money.Zero(book.Household.Currency);
        long next = book.Ledger.Movements.Count + 1;
        var movements = ImmutableArray.CreateBuilder<Movement>();
        if (!FillPart.GoesThroughTheWallet(pot))
        {
            // A pot that was for spending once may have left cash in the wallet.
            Move(date, WalletFills.Wallet(pot), WalletFills.AtHome(pot), book.Ledger.Balances[WalletFills.Wallet(pot)], "no longer spent from the wallet");
            return new ToTakeUp(movements.ToImmutable(), []);
        }

        LedgerEnd home = WalletFills.AtHome(pot);
        LedgerEnd wallet = WalletFills.Wallet(pot);
        ImmutableArray<FillPart> notDone = FillPart.NotDone(book, pot);
        var fills = ImmutableArray.CreateBuilder<WalletFill>();
        foreach (FillPart part in notDone.Where(IsDue))
        {
            LocalDate day = WalletFills.DayOf(book, part, part.Key.Day, EndCourse.With(book.Ledger, home, movements));
            fills.Add(WalletFills.Filled(part, day, Move(day, home, wallet, part.Moves, WalletFills.Reason)));
        }

        Money waiting = Money.Sum(notDone.Where(part => part.Key.Payday <= date && !IsDue(part)).Select(part => part.Amount), nothing.Currency);
        Money rest = EndCourse.With(book.Ledger, home, movements).LeastFrom(date) - waiting;
        Move(date, home, wallet, rest.ClampToZero(), "in the wallet");
        return new ToTakeUp(movements.ToImmutable(), fills.ToImmutable());

        bool IsDue(FillPart part) => part.Marked is null && part.Key.Day <= date;

        long? Move(LocalDate on, LedgerEnd from, LedgerEnd to, Money amount, string reason)
        {
            if (amount.IsZero)
            {
                return null;
            }

            movements.Add(new Movement(next + movements.Count, on, from, to, amount, reason));
            return movements[^1].Number;
        }
    }

    /// <summary>The same, to be written from another number on.</summary>
    /// <param name="number">The number of its first movement.</param>
    public ToTakeUp From(long number)
    {
        if (Movements.IsEmpty || Movements[0].Number == number)
        {
            return this;
        }

        long by = number - Movements[0].Number;
        return new ToTakeUp(
            [.. Movements.Select(movement => movement with { Number = movement.Number + by })],
            [.. Fills.Select(fill => fill with { Movement = fill.Movement + by })]);
    }

    /// <summary>Writes it.</summary>
    /// <returns>What was taken.</returns>
    public TakenUp Write(WeekWriter writer)
    {
        ToTakeUp here = From(writer.Next);
        writer.Add(here.Movements);
        if (!here.Fills.IsEmpty)
        {
            writer.Record(weeks => weeks.With(here.Fills));
        }

        return here.Taken;
    }
}
