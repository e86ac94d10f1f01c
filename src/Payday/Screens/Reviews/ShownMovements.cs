using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Histories;
using Payday.Core.Ledgers;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Screens.Reviews;

/// <summary>The movements of a book that a filter takes, the newest day first, as cells of a table.</summary>
/// <remarks>Made once for a book and a filter, not at each key: a ledger of years has many.</remarks>
internal sealed class ShownMovements
{
    private readonly Book book;
    private readonly MovementFilter filter;
    private readonly DateColumn dates;

    public ShownMovements(Book book, MovementFilter filter)
    {
        this.book = book;
        this.filter = filter;
        Movements = [.. DayOrder.Of([.. book.Ledger.Movements.Where(filter.Takes)], movement => movement.Date).Reverse()];
        dates = DateColumn.Of(Movements.Select(movement => movement.Date));
        Widest =
        [
            Movements.IsEmpty ? "" : Number(Movements.Max(movement => movement.Number)),
            dates.Widest,
            WidestEnd(movement => movement.From),
            WidestEnd(movement => movement.To),
            Movements.Select(movement => movement.Amount).DefaultIfEmpty(Money.Zero(book.Household.Currency)).Max().ToString(book.Household.Settings.Numbers),
        ];
    }

    /// <summary>The movements.</summary>
    public ImmutableArray<Movement> Movements { get; }

    /// <summary>For each column a cell as wide as its widest.</summary>
    public ImmutableArray<string> Widest { get; }

    /// <summary>Whether these are the movements of a book and filter.</summary>
    public bool IsOf(Book other, MovementFilter by) => ReferenceEquals(book, other) && filter == by;

    /// <summary>Number, date, from, to and amount of the movement at a place from 0.</summary>
    public ImmutableArray<string> Cells(int index) =>
    [
        Number(Movements[index].Number),
        dates.Text(Movements[index].Date),
        EndText.Of(book.Household, Movements[index].From),
        EndText.Of(book.Household, Movements[index].To),
        Movements[index].Amount.ToString(book.Household.Settings.Numbers),
    ];

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    private string WidestEnd(Func<Movement, LedgerEnd> end) => Movements
        .Select(end)
        .Distinct()
        .Select(distinct => EndText.Of(book.Household, distinct))
        .MaxBy(TextColumns.Width) ?? "";
}
