using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Screens.Cards;

/// <summary>The card purchases of a book, the newest first, as cells of a table.</summary>
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
        Purchases = [.. book.Weeks.Purchases.Reverse().OrderByDescending(purchase => purchase.Date)];
        dates = DateColumn.Of(Purchases.Select(purchase => purchase.Date));
        Widest =
        [
            Purchases.IsEmpty ? "" : Number(Purchases.Max(purchase => purchase.Number)),
            dates.Widest,
            Purchases.Select(purchase => purchase.PotId).Distinct().Select(pot => WeekText.PotName(book, pot)).MaxBy(TextColumns.Width) ?? "",
            Purchases.Select(purchase => purchase.What).MaxBy(TextColumns.Width) ?? "",
            Largest(purchase => purchase.Amount),
            Largest(purchase => purchase.OwedBack),
        ];
        OwedBack = ReturnPlan.Of(book, ReturnDraft.AsPlanned).Total;
    }

    /// <summary>The purchases.</summary>
    public ImmutableArray<CardPurchase> Purchases { get; }

    /// <summary>For each column a cell as wide as its widest.</summary>
    public ImmutableArray<string> Widest { get; }

    /// <summary>How much cash is owed back in all.</summary>
    public Money OwedBack { get; }

    /// <summary>Whether these are the purchases of a book.</summary>
    public bool AreOf(Book other) => ReferenceEquals(book, other);

    /// <summary>Whether what a purchase owed came back.</summary>
    public bool IsBack(CardPurchase purchase) => !owed.Contains(purchase.Number);

    /// <summary>Number, date, pot, what, amount and what is owed back of the purchase at a place from 0.</summary>
    public ImmutableArray<string> Cells(int index)
    {
        CardPurchase purchase = Purchases[index];
        return
        [
            Number(purchase.Number),
            dates.Text(purchase.Date),
            WeekText.PotName(book, purchase.PotId),
            purchase.What,
            Text(purchase.Amount),
            purchase.OwedBack.IsZero ? "" : Text(purchase.OwedBack),
        ];
    }

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    private string Largest(Func<CardPurchase, Money> amount) =>
        Purchases.Select(amount).Where(one => !one.IsZero).ToArray() is { Length: > 0 } amounts
            ? new[] { Text(amounts.Max()), Text(amounts.Min()) }.MaxBy(TextColumns.Width)!
            : "";

    private string Text(Money amount) => amount.ToString(book.Household.Settings.Numbers);
}
