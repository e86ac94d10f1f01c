using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Screens.Routines;

/// <summary>The work of one step: a table, what its keys do, and what stands below it.</summary>
/// <param name="work">The routine worked on.</param>
internal abstract class StepView(RoutineWork work)
{
    private (RoutinePlan? Plan, int Beside, ImmutableArray<StepRow> Rows) known;
    private (ImmutableArray<StepRow> Rows, int Width, (ImmutableArray<string>, ImmutableArray<string>, string) Lines)? laid;

    /// <summary>From so many columns on there is room for wide gaps and whole reasons.</summary>
    protected const int Roomy = 74;

    /// <summary>The step.</summary>
    public abstract RoutineStep Step { get; }

    /// <summary>The step's own keys.</summary>
    public virtual IReadOnlyList<Binding> Keys => [];

    /// <summary>Words used here.</summary>
    public abstract IReadOnlyList<(string Word, string Meaning)> Words { get; }

    /// <summary>The routine worked on.</summary>
    protected RoutineWork Work { get; } = work;

    /// <summary>The routine as it stands.</summary>
    protected RoutinePlan Plan => Work.Plan;

    /// <summary>How amounts are written.</summary>
    protected NumberStyle Style => Work.Session.Style;

    /// <summary>The rows.</summary>
    public abstract ImmutableArray<StepRow> Rows { get; }

    /// <summary>The rows, made once for each routine that is looked at: with a household of many items they take longer than a key may, and a key asks for them many times.</summary>
    public ImmutableArray<StepRow> RowsNow
    {
        get
        {
            if (!ReferenceEquals(Plan, known.Plan) || Beside != known.Beside)
            {
                known = (Plan, Beside, Rows);
            }

            return known.Rows;
        }
    }

    /// <summary>What the rows depend on besides the routine, as a number; zero where on nothing.</summary>
    protected virtual int Beside => 0;

    /// <summary>The columns of the table.</summary>
    protected abstract ImmutableArray<TextColumn> Columns { get; }

    /// <summary>The columns where they depend on the room there is.</summary>
    protected virtual ImmutableArray<TextColumn> ColumnsIn(int width) => Columns;

    /// <summary>How many lines below the table are kept for the row under the cursor, so that the table stands still.</summary>
    public virtual int DetailLines => 2;

    /// <summary>A line under the table, such as a total; empty for none.</summary>
    public virtual Said Note => Said.Quiet("");

    /// <summary>What the columns come to, a cell each; empty for nothing. It stays in view under the table.</summary>
    protected virtual ImmutableArray<string> Totals => [];

    /// <summary>The table as lines: header first, then a line a row; and the line of its totals, empty for none.</summary>
    public (ImmutableArray<string> Header, ImmutableArray<string> Rows, string Totals) Table(ImmutableArray<StepRow> rows, int width)
    {
        if (laid is { } before && before.Rows == rows && before.Width == width)
        {
            return before.Lines;
        }

        (ImmutableArray<string>, ImmutableArray<string>, string) lines = Lay(rows, width);
        laid = (rows, width, lines);
        return lines;
    }

    private (ImmutableArray<string> Header, ImmutableArray<string> Rows, string Totals) Lay(ImmutableArray<StepRow> rows, int width)
    {
        ImmutableArray<string> totals = rows.IsEmpty ? [] : Totals;
        TextTableLines lines = new TextTable(
            ColumnsIn(width), [.. rows.Select(row => width < Roomy && row.LastInShort is { } last ? row.Cells.SetItem(row.Cells.Length - 1, last) : row.Cells)], totals.IsEmpty ? [] : [totals], gap: width < Roomy ? 1 : 2, decimalMark: Style.DecimalMark).Lay(width);
        return (lines.Header, lines.Rows, lines.Totals.LastOrDefault(""));
    }

    /// <summary>An amount as this household writes it.</summary>
    protected string Shown(Money amount) => amount.ToString(Style);

    /// <summary>An amount, marked where the person changed it.</summary>
    protected string Marked(Money amount, bool changed) => Report.Marked(amount, changed, Style);

    /// <summary>Takes a decision that may be refused.</summary>
    /// <returns>Why it can't be taken, or null.</returns>
    protected string? Decided(Result<RoutineDraft> draft) => draft.Ok ? Work.Decide(_ => draft.Value) : FaultTexts.Of(draft.Fault, Style);

    /// <summary>Edits an amount of zero or more; sums are taken.</summary>
    protected CellEdit Amount(string prompt, Money now, Func<RoutineDraft, Money, RoutineDraft> decide) =>
        Amount(prompt, now, amount => Work.Decide(draft => decide(draft, amount)));

    /// <summary>The same, where taking the amount may be refused.</summary>
    protected CellEdit Amount(string prompt, Money now, Func<Money, string?> take) =>
        new(prompt, Shown(now), text =>
        {
            Result<Money> amount = Money.ParseSum(text, now.Currency, Style);
            return !amount.Ok ? FaultTexts.Of(amount.Fault, Style)
                : amount.Value.IsNegative ? "An amount below zero has no place here."
                : take(amount.Value);
        });
}
