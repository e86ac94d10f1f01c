using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Screens.Cards;

/// <summary>The card purchases of a book, the newest first, as cells of a table; one over several pots has a row, and under it one for each part.</summary>
/// <remarks>Made once for a book, not at each key: years have many.</remarks>
internal sealed class ShownPurchases
{
    private readonly Book book;
    private readonly HashSet<long> owed;
    private readonly DateColumn dates;

    public ShownPurchases(Book book)
    {
        this.book = book;
        owed = [.. OwedItems.Of(book).Where(item => item.Key.Kind == OwedKind.Purchase).Select(item => item.Key.Number)];
        Rows =
        [
            .. from whole in book.Weeks.Purchases.GroupBy(purchase => purchase.WholeNumber).Reverse().OrderByDescending(parts => parts.First().Date)
               let parts = whole.ToImmutableArray()
               from row in parts.Length == 1 ? [new Row(parts, null)] : parts.Select(part => new Row(parts, part)).Prepend(new Row(parts, null))
               select row,
        ];
        RecordList<CardPurchase, PurchaseTraits> all = book.Weeks.Purchases;
        dates = DateColumn.Of(all.Select(purchase => purchase.Date));
        Widest =
        [
            dates.Widest,
            Rows.Select(Pot).Distinct().MaxBy(TextColumns.Width) ?? "",
            all.Select(purchase => purchase.What).MaxBy(TextColumns.Width) ?? "",
            Largest(row => row.Amount),
            Largest(row => row.OwedBack),
        ];
        OwedBack = ReturnPlan.Of(book, ReturnDraft.AsPlanned).Total;
    }

    /// <summary>The rows.</summary>
    public ImmutableArray<Row> Rows { get; }

    /// <summary>For each column a cell as wide as its widest.</summary>
    public ImmutableArray<string> Widest { get; }

    /// <summary>How much cash is owed back in all.</summary>
    public Money OwedBack { get; }

    /// <summary>Whether these are the purchases of a book.</summary>
    public bool AreOf(Book other) => ReferenceEquals(book, other);

    /// <summary>Whether what a purchase owed came back.</summary>
    public bool IsBack(CardPurchase purchase) => !owed.Contains(purchase.Number);

    /// <summary>Date, pot, what, amount and what is owed back of the row at a place from 0.</summary>
    public ImmutableArray<string> Cells(int index)
    {
        Row row = Rows[index];
        CardPurchase first = row.Parts[0];
        return
        [
            row.Part is null ? dates.Text(first.Date) : "",
            Pot(row),
            row.Part is null ? first.What : "",
            Text(row.Amount),
            row.OwedBack.IsZero ? "" : Text(row.OwedBack),
        ];
    }

    private string Pot(Row row) => row.Part is { } part ? "  " + WeekText.PotName(book, part.PotId)
        : row.Parts.Length > 1 ? $"{row.Parts.Length} pots"
        : WeekText.PotName(book, row.Parts[0].PotId);

    private string Largest(Func<Row, Money> amount) =>
        Rows.Select(amount).Where(one => !one.IsZero).ToArray() is { Length: > 0 } amounts
            ? new[] { Text(amounts.Max()), Text(amounts.Min()) }.MaxBy(TextColumns.Width)!
            : "";

    private string Text(Money amount) => amount.ToString(book.Household.Settings.Numbers);

    /// <summary>A row: a purchase as a whole, or one of its parts.</summary>
    /// <param name="Parts">The whole purchase.</param>
    /// <param name="Part">The part; null for the whole.</param>
    internal sealed record Row(ImmutableArray<CardPurchase> Parts, CardPurchase? Part)
    {
        /// <summary>What the row is about.</summary>
        public ImmutableArray<CardPurchase> Of => Part is { } part ? [part] : Parts;

        /// <summary>What was paid.</summary>
        public Money Amount => Money.Sum(Of.Select(part => part.Amount), Parts[0].Amount.Currency);

        /// <summary>What is owed back for it in cash.</summary>
        public Money OwedBack => Money.Sum(Of.Select(part => part.OwedBack), Parts[0].Amount.Currency);
    }
}
