using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Undo;

/// <summary>Something that was entered in a book, as the person would point at it, and as a whole can be taken back.</summary>
public abstract record BookEntry
{
    private BookEntry()
    {
    }

    /// <summary>A confirmed count.</summary>
    /// <param name="PotId">The pot.</param>
    /// <param name="Pot">What the person calls it.</param>
    /// <param name="Date">The day it was counted for.</param>
    public sealed record Count(PotId PotId, string Pot, LocalDate Date) : BookEntry;

    /// <summary>A fill of the wallet.</summary>
    /// <param name="PotId">The pot.</param>
    /// <param name="Pot">What the person calls it.</param>
    /// <param name="Day">Its fill day.</param>
    public sealed record Fill(PotId PotId, string Pot, LocalDate Day) : BookEntry;

    /// <summary>A card purchase, or a refund of one.</summary>
    /// <param name="Number">Its number.</param>
    public sealed record Purchase(long Number) : BookEntry;

    /// <summary>A payment of a due, or that it was freed.</summary>
    /// <param name="Number">Its number.</param>
    /// <param name="Name">What the person calls the bill or the debt.</param>
    /// <param name="Due">The date of the due by its schedule.</param>
    public sealed record Payment(long Number, string Name, LocalDate Due) : BookEntry;

    /// <summary>A cash return.</summary>
    /// <param name="Number">Its number.</param>
    /// <param name="Date">The day on which the cash was at the bank.</param>
    public sealed record Return(long Number, LocalDate Date) : BookEntry;

    /// <summary>Which notes the bank gave for a payday's slip.</summary>
    /// <param name="Date">The payday of the slip.</param>
    public sealed record Received(LocalDate Date) : BookEntry;

    /// <summary>That the difference of a count was cleared up.</summary>
    /// <param name="Number">The number of the count.</param>
    /// <param name="Counted">The count.</param>
    public sealed record Difference(long Number, Count Counted) : BookEntry;

    /// <summary>A closed payday.</summary>
    /// <param name="Date">Its date.</param>
    public sealed record Payday(LocalDate Date) : BookEntry;

    /// <summary>A reconciliation of the account with the bank.</summary>
    /// <param name="Number">Its number.</param>
    /// <param name="Date">The day of the bank's balance.</param>
    public sealed record Reconciliation(long Number, LocalDate Date) : BookEntry;

    /// <summary>Statements of the bank's, taken at once.</summary>
    /// <param name="Number">Its number.</param>
    /// <param name="To">The last day of the last one.</param>
    public sealed record Statement(long Number, LocalDate To) : BookEntry;

    /// <summary>A movement of the ledger that belongs to nothing else.</summary>
    /// <param name="Number">Its number.</param>
    public sealed record Movement(long Number) : BookEntry;

    /// <summary>Money moved from one purpose to another.</summary>
    /// <param name="Number">Its number.</param>
    /// <param name="Date">Its day.</param>
    public sealed record Moved(long Number, LocalDate Date) : BookEntry;

    /// <summary>An account entry, or one of cash.</summary>
    /// <param name="Number">Its number.</param>
    /// <param name="Date">Its day.</param>
    /// <param name="Kind">What sort of entry it is.</param>
    /// <param name="IsCount">Whether it is that the loose notes were counted.</param>
    public sealed record Entered(long Number, LocalDate Date, EntryKind Kind, bool IsCount) : BookEntry;

    /// <summary>What stands and a movement belongs to, other than a closed payday; null where there is none.</summary>
    public static BookEntry? Of(Book book, long movement)
    {
        ArgumentNullException.ThrowIfNull(book);
        return OwnMovements.All(book).Where(one => one.Has(movement)).Select(one => Of(book, one.Record)).FirstOrDefault();
    }

    /// <summary>The same of each movement by its number, for who looks at many: null where there is none.</summary>
    internal static Func<long, BookEntry?> ByMovement(Book book)
    {
        object?[] records = OwnMovements.ByMovement(book);
        return number => records[number] is { } record ? Of(book, record) : null;
    }

    private static BookEntry Of(Book book, object record) => record switch
    {
        CashReturn { Payday: { } payday } => new Payday(payday),
        CashReturn back => new Return(back.Number, back.Date),
        NotesReceived received => new Received(received.Payday),
        SettledDifference settled => Of(book, settled),
        WeekCount count => Of(book, count),
        CardPurchase purchase => new Purchase(purchase.WholeNumber),
        DuePayment payment => Of(book, payment),
        Books.Move move => Of(move),
        AccountEntry entry => Of(entry),
        WalletFill fill => Of(book, fill.Key),
        _ => throw new ArgumentException($"{record.GetType().Name} is no record of a movement.", nameof(record)),
    };

    internal static Moved Of(Move move) => new(move.Number, move.Date);

    internal static Entered Of(AccountEntry entry) => new(entry.Number, entry.Date, entry.Kind, entry.Counted is not null);

    internal static Reconciliation Of(Books.Reconciliation one) => new(one.Number, one.Date);

    internal static Statement Of(TakingOfStatements one) => new(one.Number, one.To);

    internal static Payment Of(Book book, DuePayment payment) => new(
        payment.Number,
        NameOf(book, payment.Key.Owner),
        payment.Key.Scheduled);

    /// <summary>What the person calls a bill or a debt; its id where it is gone.</summary>
    public static string NameOf(Book book, DueOwner owner) => owner switch
    {
        { Bill: { } bill } => book.Household.Bills.FirstOrDefault(one => one.Id == bill)?.Name ?? bill.Text,
        { Debt: var debt } => book.Household.Debts.FirstOrDefault(one => one.Id == debt)?.Name ?? debt!.Value.Text,
    };

    internal static Count Of(Book book, WeekCount count) => new(count.PotId, PotName(book, count.PotId), count.Date);

    internal static Fill Of(Book book, FillKey key) => new(key.PotId, PotName(book, key.PotId), key.Day);

    internal static Difference Of(Book book, SettledDifference settled) => new(settled.Count, Of(book, book.Weeks.Counts[(int)settled.Count - 1]));

    private static string PotName(Book book, PotId potId) => book.Household.Pots.FirstOrDefault(pot => pot.Id == potId)?.Name ?? potId.Text;
}
