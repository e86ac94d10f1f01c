using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Fills;

/// <summary>A part of a spending pot's cash that goes from home into the wallet.</summary>
/// <param name="Key">Which part.</param>
/// <param name="Pot">The pot.</param>
/// <param name="Amount">What its notes come to.</param>
/// <param name="Notes">By value in minor units: the notes that the payday planned for it.</param>
/// <param name="Marked">What became of it, or null while it waits.</param>
public sealed record FillPart(FillKey Key, Pot Pot, Money Amount, Notes Notes, WalletFill? Marked)
{
    /// <summary>
    /// What it moves: for a fill that is done what it moved, for another what it would move now. That is the amount, or
    /// less where a card purchase took of it at home; what is there goes to the earliest that waits first.
    /// </summary>
    public Money Moves { get; init; } = Amount;

    /// <summary>
    /// Whether it is marked done only because a purchase, a move or an entry took of it before anybody said that it was filled,
    /// see <see cref="AssumedFills"/>: it still waits, and moves what is left of it in the wallet.
    /// </summary>
    public bool IsAssumed { get; init; }

    /// <summary>The parts of all closed paydays, by day, then in the order of the household's pots.</summary>
    /// <remarks>Only spending goes through the wallet; what is saved stays in its envelope at home.</remarks>
    public static ImmutableArray<FillPart> Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        ImmutableArray<Pot> pots = [.. book.Household.Pots.Where(GoesThroughTheWallet)];
        return AssumedFills.Marked(book, pots.SelectMany(pot => Of(book, pot)).OrderBy(part => part.Key.Day));
    }

    /// <summary>Whether a pot's cash is spent from the wallet.</summary>
    public static bool GoesThroughTheWallet(Pot pot)
    {
        ArgumentNullException.ThrowIfNull(pot);
        return pot is { Place: Place.Cash, Kind: PotKind.Spending };
    }

    /// <summary>The parts of one pot, by day.</summary>
    internal static ImmutableArray<FillPart> Of(Book book, Pot pot) => Moving(book, pot, Of(book, pot, book.Closed, _ => true));

    /// <summary>Those of a pot that were skipped or not marked: few, however long the household has been at it.</summary>
    internal static ImmutableArray<FillPart> NotDone(Book book, Pot pot) => Moving(book, pot, Of(book, pot, book.Closed, marked => marked?.State != FillState.Done));

    /// <summary>Those of a pot with some keys, done ones, by day.</summary>
    internal static ImmutableArray<FillPart> Of(Book book, Pot pot, ImmutableArray<FillKey> keys) =>
        [.. Of(book, pot, book.Closed.Where(closed => keys.Any(key => key.Payday == closed.Payday)), marked => marked is { State: FillState.Done } done && keys.Contains(done.Key))];

    /// <summary>Those of all pots that are done, by day, then in the order of the household's pots.</summary>
    internal static ImmutableArray<FillPart> Done(Book book) =>
        [.. ByPot(book, marked => marked?.State == FillState.Done).SelectMany(pot => pot.Parts).OrderBy(part => part.Key.Day)];

    /// <summary>Those of all pots that were skipped or not marked, by day.</summary>
    internal static ImmutableArray<FillPart> NotDone(Book book) => book.Remembered(static of => new OpenFills(
        [.. ByPot(of, marked => marked?.State != FillState.Done).SelectMany(pot => Moving(of, pot.Pot, pot.Parts)).OrderBy(part => part.Key.Day)])).Parts;

    /// <summary>Those of a pot of the paydays whose period goes beyond a day.</summary>
    internal static ImmutableArray<FillPart> Beyond(Book book, Pot pot, LocalDate? day) =>
        Of(book, pot, day is { } last ? book.Closed.Where(closed => closed.Period.Last > last) : book.Closed, _ => true);

    // In one walk over all paydays ever closed, rather than one for each pot.
    private static IEnumerable<(Pot Pot, ImmutableArray<FillPart> Parts)> ByPot(Book book, Func<WalletFill?, bool> takes)
    {
        Dictionary<PotId, (FillMarks.OfPot Marks, List<FillPart> Parts)> pots = [];
        Dictionary<PotId, Pot> wallet = book.Household.Pots.Where(GoesThroughTheWallet).ToDictionary(pot => pot.Id);
        foreach (Pot pot in wallet.Values)
        {
            pots[pot.Id] = (book.Weeks.MarksOf(pot.Id), []);
        }

        foreach (ClosedPayday closed in book.Closed)
        {
            foreach (ClosedPart part in book.Weeks.ReceivedOn(closed.Payday)?.Parts ?? closed.Parts)
            {
                if (!part.Notes.IsEmpty && pots.TryGetValue(part.PotId, out (FillMarks.OfPot Marks, List<FillPart> Parts) pot)
                    && pot.Marks[closed.Payday, part.Week] is var mark && takes(mark))
                {
                    pot.Parts.Add(Of(book, closed, wallet[part.PotId], part, mark));
                }
            }
        }

        return wallet.Values.Select(pot => (pot, pots[pot.Id].Parts.OrderBy(part => part.Key.Day).ToImmutableArray()));
    }

    // What was skipped comes after what waits.
    private static ImmutableArray<FillPart> Moving(Book book, Pot pot, ImmutableArray<FillPart> parts)
    {
        if (parts.All(part => part.Marked?.State == FillState.Done))
        {
            return parts;
        }

        EndCourse home = EndCourse.Of(book.Ledger, WalletFills.AtHome(pot));
        LocalDate? counted = book.Weeks.LastCountOf(pot.Id)?.Date;
        Money promised = Money.Zero(book.Household.Currency);
        var moves = new Dictionary<FillKey, Money>();
        foreach (FillPart part in parts.Where(part => part.Marked?.State != FillState.Done).OrderBy(part => part.Marked is not null))
        {
            LocalDate day = counted > part.Key.Day ? counted.Value : part.Key.Day;
            moves[part.Key] = Money.Min(part.Amount, (home.LeastFrom(day) - promised).ClampToZero());
            promised += moves[part.Key];
        }

        return [.. parts.Select(part => part with { Moves = moves.GetValueOrDefault(part.Key, part.Moves) })];
    }

    // Loops, not a query: it is asked many times on a screen, and goes through all paydays ever closed.
    private static ImmutableArray<FillPart> Of(Book book, Pot pot, IEnumerable<ClosedPayday> paydays, Func<WalletFill?, bool> takes)
    {
        FillMarks.OfPot marks = book.Weeks.MarksOf(pot.Id);
        var parts = new List<FillPart>();
        foreach (ClosedPayday closed in paydays)
        {
            foreach (ClosedPart part in book.Weeks.ReceivedOn(closed.Payday)?.PartsOf(pot.Id) ?? closed.PartsOf(pot.Id))
            {
                if (!part.Notes.IsEmpty && marks[closed.Payday, part.Week] is var mark && takes(mark))
                {
                    parts.Add(Of(book, closed, pot, part, mark));
                }
            }
        }

        return [.. parts.OrderBy(part => part.Key.Day)];
    }

    private static FillPart Of(Book book, ClosedPayday closed, Pot pot, ClosedPart part, WalletFill? mark)
    {
        Money amount = part.Notes.Worth(book.Household.Currency);
        return new FillPart(new FillKey(closed.Payday, part.Week, pot.Id), pot, amount, part.Notes, mark) { Moves = mark is { State: FillState.Done } done ? done.Amount : amount };
    }

    // Once for each book, as they go through all fills and paydays of a life.
    private sealed record OpenFills(ImmutableArray<FillPart> Parts);
}
