using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ids;

namespace Payday.Core.Histories;

/// <summary>What happened to one pot: what it began with, and a line for each count, fill, purchase and move, by date.</summary>
/// <param name="PotId">The pot.</param>
/// <param name="Lines">Oldest first.</param>
/// <param name="Balances">
/// What the pot had at the end of each day on which its money moved, oldest first: in the account and in cash, without
/// cash that it owes back.
/// </param>
/// <param name="Weeks">How many weeks were counted.</param>
/// <param name="SpentAWeek">
/// What was spent in a counted week, in cash and by card, on average, to the nearest minor unit; null before the first
/// count.
/// </param>
public sealed record PotHistory(PotId PotId, ImmutableArray<PotHistoryLine> Lines, ImmutableArray<PotBalance> Balances, int Weeks, Money? SpentAWeek)
{
    /// <summary>The history of a pot.</summary>
    public static PotHistory Of(Book book, PotId potId)
    {
        ArgumentNullException.ThrowIfNull(book);
        WeekCount[] counts = [.. book.Weeks.Counts.With(CountTraits.Stands, potId)];
        int weeks = counts.Sum(count => WeeksOf(book, count));
        return new PotHistory(
            potId,
            [.. HistoryLines.Of(book, potId).OrderBy(line => line.Date)],
            PotBalance.Of(book.Ledger, potId),
            weeks,
            weeks == 0 ? null : Average(book, potId, counts, weeks));
    }

    /// <summary>What the pot had at the end of a day; null before its first money.</summary>
    public Money? On(LocalDate date)
    {
        // In order of date: a long history asks for each of its lines.
        int low = 0;
        int high = Balances.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = Balances[middle].Date <= date ? (middle + 1, high) : (low, middle);
        }

        return low == 0 ? null : Balances[low - 1].Has;
    }

    /// <summary>What was spent up to each count since the one before, in cash and by card, oldest first.</summary>
    public ImmutableArray<CountedSpending> Spending
    {
        get
        {
            var spending = ImmutableArray.CreateBuilder<CountedSpending>();
            var cards = new Queue<PotHistoryLine>(Lines.Where(line => line.Kind == PotEvent.Card));
            foreach (PotHistoryLine count in Lines.Where(line => line.Kind == PotEvent.Counted))
            {
                Money card = Money.Zero(count.Amount.Currency);
                while (cards.TryPeek(out PotHistoryLine? next) && next.Date <= count.Date)
                {
                    card += cards.Dequeue().Amount;
                }

                spending.Add(new CountedSpending(count.Date, count.Amount, card));
            }

            return spending.ToImmutable();
        }
    }

    private static Money Average(Book book, PotId potId, WeekCount[] counts, int weeks)
    {
        LocalDate last = counts[^1].Date;
        IEnumerable<Money> cash = counts.Select(count => count.Spent);
        IEnumerable<Money> card = book.Weeks.Purchases.With(PurchaseTraits.Stands, potId)
            .Where(purchase => purchase.Date <= last)
            .Select(purchase => purchase.Amount);
        Money spent = Money.Sum(cash.Concat(card), book.Household.Currency);
        return Money.FromMinorUnits(((2 * spent.MinorUnits) + weeks) / (2 * weeks), spent.Currency);
    }

    // From the week after the count before it, or from the pot's first fill, to the week it closes: at least one, unless
    // the same week was counted before.
    private static int WeeksOf(Book book, WeekCount count)
    {
        LocalDate first = count.Since is { } since
            ? book.Household.Settings.WeekOf(since).PlusWeeks(1)
            : book.Household.Settings.WeekOf(FirstDay(book, count));
        return Math.Max(0, (Period.DaysBetween(first, count.Week) / 7) + 1);
    }

    private static LocalDate FirstDay(Book book, WeekCount count) => book.Weeks.Fills
        .Where(fill => fill.Key.PotId == count.PotId && fill.State == FillState.Done)
        .Select(fill => fill.Key.Day)
        .Append(count.Week)
        .Min();
}

/// <summary>What was spent from a pot up to one of its counts.</summary>
/// <param name="Date">The day of the count.</param>
/// <param name="Cash">In cash, since the count before.</param>
/// <param name="Card">By card, since the count before.</param>
public sealed record CountedSpending(LocalDate Date, Money Cash, Money Card)
{
    /// <summary>Both together.</summary>
    public Money Together => Cash + Card;
}

/// <summary>One thing that happened to a pot.</summary>
/// <param name="Date">When.</param>
/// <param name="Kind">What sort.</param>
/// <param name="Amount">Of it: filled, spent, bought or moved; above zero is into the pot for fills and moves.</param>
/// <param name="Left">For a count: what was left.</param>
/// <param name="What">For a purchase and what it owes back what it was, for a move where to or from and why, for an entry what it was, for a count its difference's name.</param>
public sealed record PotHistoryLine(LocalDate Date, PotEvent Kind, Money Amount, Money? Left, string What)
{
    /// <summary>Whether another line says what it changed: a purchase by card from a cash pot, whose cash is to be paid back.</summary>
    public bool IsBeside { get; init; }

    /// <summary>What the pot has more by it, below zero for less; null where nothing changes by it: cash that goes in the wallet or was put apart before is the pot's before and after.</summary>
    public Money? Change => this switch
    {
        { Kind: PotEvent.Wallet or PotEvent.Skipped or PotEvent.Returned } or { IsBeside: true } => null,
        { Kind: PotEvent.Counted or PotEvent.Card or PotEvent.OwedBack } => -Amount,
        _ => Amount,
    };
}

/// <summary>What can happen to a pot.</summary>
public enum PotEvent
{
    /// <summary>What it had when the household began.</summary>
    Opening,

    /// <summary>Money was put in by a payday.</summary>
    Fill,

    /// <summary>The wallet was filled from home.</summary>
    Wallet,

    /// <summary>A fill of the wallet was skipped.</summary>
    Skipped,

    /// <summary>It was counted: the amount is what was spent in cash since the count before.</summary>
    Counted,

    /// <summary>A card purchase.</summary>
    Card,

    /// <summary>Cash of it was put apart, owed back to the account after a card purchase.</summary>
    OwedBack,

    /// <summary>Owed-back cash reached the account.</summary>
    Returned,

    /// <summary>What was left moved on, or came from another pot.</summary>
    Move,

    /// <summary>Money came in, or below zero went out, by an account entry.</summary>
    Entry,

    /// <summary>Missing money, below zero, or money that was found or turned up.</summary>
    Difference,
}
