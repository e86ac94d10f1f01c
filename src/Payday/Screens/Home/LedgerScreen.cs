using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Ledgers;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Home;

/// <summary>Every movement of money, the newest first, of one name or of all.</summary>
internal sealed class LedgerScreen(BookSession session) : PageScreen
{
    private string filter = "";

    /// <inheritdoc/>
    public override string Title => filter.Length == 0 ? "Ledger" : $"Ledger: {filter}";

    /// <inheritdoc/>
    protected override string Aside => "newest first";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        new(new Key('f'), "f", "filter", "Only movements that name a pot, bill, debt, date or reason; empty for all.", () =>
            new Way.Edit(new CellEdit("Only movements with", filter, text =>
            {
                filter = CleanText.OneLine(text).Trim();
                return null;
            }))),
    ];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        ImmutableArray<ImmutableArray<string>> rows = [.. session.Book.Ledger.Movements.Reverse().Select(Cells)
            .Where(cells => cells.Any(cell => cell.Contains(filter, StringComparison.OrdinalIgnoreCase)))];
        return rows.IsEmpty
            ? [FrameLine.Of(filter.Length == 0 ? " Nothing has moved yet." : " No movement has that; f changes the filter.")]
            : new TextTable(
                [new("", Align.Right), new("date"), new("from"), new("to") { Shrinks = true, MinWidth = 14 }, Report.Amounts("amount")],
                rows,
                decimalMark: session.Style.DecimalMark).Lay(width - 2).All.Select(line => FrameLine.Of(" " + line));
    }

    private ImmutableArray<string> Cells(Movement movement) =>
    [
        movement.Number.ToString(CultureInfo.InvariantCulture),
        DateText.Short(movement.Date),
        EndText.Of(session.Book.Household, movement.From),
        EndText.Of(session.Book.Household, movement.To),
        movement.Amount.ToString(session.Style),
    ];
}
