using System.Collections;
using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Histories;
using Payday.Core.Ledgers;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Screens.Reviews;

/// <summary>The ledger by what was done, the newest day first; those that are unfolded with their movements below them.</summary>
/// <remarks>Only the rows that show are laid out: a ledger of years has many.</remarks>
internal sealed class LedgerRows
{
    private readonly Book book;
    private readonly DateColumn dates;
    private readonly ImmutableArray<LedgerGroup> groups;
    private readonly HashSet<long> unfolded = [];
    private List<LedgerRow> rows = [];

    public LedgerRows(Book book, LedgerRows? before = null)
    {
        this.book = book;
        groups = [.. DayOrder.Of(LedgerGroups.Of(book), group => group.Date).Reverse()];
        dates = DateColumn.Of(groups.Select(group => group.Date));
        unfolded.UnionWith(before?.unfolded ?? []);
        Lay();
    }

    /// <summary>How many rows there are.</summary>
    public int Count => rows.Count;

    /// <summary>A row by its place from 0.</summary>
    public LedgerRow this[int index] => rows[index];

    /// <summary>Whether these are the rows of a book.</summary>
    public bool IsOf(Book other) => ReferenceEquals(book, other);

    /// <summary>Whether the movements of a group are shown.</summary>
    public bool IsUnfolded(LedgerGroup group) => unfolded.Contains(group.Number);

    /// <summary>Shows the movements of a group, or no more.</summary>
    /// <returns>The place of the group's own row.</returns>
    public int Turn(LedgerGroup group)
    {
        if (!unfolded.Remove(group.Number))
        {
            unfolded.Add(group.Number);
        }

        Lay();
        return rows.FindIndex(row => row.Group == group && row.Movement is null);
    }

    /// <summary>The rows as text of a width.</summary>
    public IReadOnlyList<string> Texts(int width) => new Lines(this, width);

    private void Lay() => rows =
    [
        .. groups.SelectMany(group => IsUnfolded(group)
            ? group.Movements.Select(movement => new LedgerRow(group, movement)).Prepend(new LedgerRow(group, null))
            : [new LedgerRow(group, null)]),
    ];

    private string Text(LedgerRow row, int width)
    {
        (string left, Money? amount) = row.Movement is { } movement
            ? ($"  {TextColumns.PadLeft(movement.Number.ToString(CultureInfo.InvariantCulture), dates.Widest.Length)}  {EndText.Of(book.Household, movement.From)} -> {EndText.Of(book.Household, movement.To)}", (Money?)movement.Amount)
            : ($"{(IsUnfolded(row.Group) ? '-' : '+')} {TextColumns.PadRight(dates.Text(row.Group.Date), dates.Widest.Length)}  {LedgerGroupText.Of(book, row.Group)}", LedgerGroupText.Amount(book, row.Group));
        string right = amount?.ToString(book.Household.Settings.Numbers) ?? "";
        return TextColumns.Ends(TextColumns.Truncate(CleanText.OneLine(left.TrimEnd()), width - (right.Length == 0 ? 1 : TextColumns.Width(right) + 3)), right, width - 1) + " ";
    }

    private sealed class Lines(LedgerRows rows, int width) : IReadOnlyList<string>
    {
        public int Count => rows.Count;

        public string this[int index] => rows.Text(rows[index], width);

        public IEnumerator<string> GetEnumerator() => Enumerable.Range(0, Count).Select(i => this[i]).GetEnumerator();

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
    }
}

/// <summary>A row of the ledger.</summary>
/// <param name="Group">What was done.</param>
/// <param name="Movement">One of its movements; null for the row of the group itself.</param>
internal sealed record LedgerRow(LedgerGroup Group, Movement? Movement);
