using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Routines;

/// <summary>Step 4: what goes in each pot.</summary>
internal sealed class PotsView(RoutineWork work) : StepView(work)
{
    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Pots;

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Keys =>
    [
        Letters.Proposal.Does("all proposed", "Take every proposal; what was changed by hand goes back to it.", TakeAll),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Proposed", "what the pot asks for today, less a cut where it doesn't fit."),
        ("Fill", "what goes in; * marks what was changed by hand."),
        ("Week share", "a cash pot's part for one week, in whole notes."),
        ("?", "a pot with a target that was spent, or whose date is past: it gets nothing until you say what becomes of it."),
        ("Not in notes", "what no note can make; it waits in the account for the same pot and joins its next fill."),
    ];

    /// <inheritdoc/>
    public override Said Note => Plan.Pots.Cut.IsZero
        ? Said.Quiet(Plan.Pots.Rows.Count(row => row.Asks) is > 0 and var asking ? $"? {(asking == 1 ? "One pot asks" : $"{asking} pots ask")} what becomes of it; go to its row." : "")
        : Said.Alert(PotsReport.Short(Plan, Style));

    /// <inheritdoc/>
    public override ImmutableArray<StepRow> Rows => [.. Plan.Pots.Rows.Select(Row)];

    /// <inheritdoc/>
    protected override ImmutableArray<TextColumn> Columns => ColumnsIn(Roomy);

    /// <inheritdoc/>
    /// <remarks>
    /// Where a pot is held and what it has give way to its name and the reason; all of it stands below the table too. What is
    /// filled has the room of what is proposed, so that the table stays where it is while amounts are lowered.
    /// </remarks>
    protected override ImmutableArray<TextColumn> ColumnsIn(int width) =>
    [
        Report.Names("Pot") with { MinWidth = 15 }, new("where") { Drops = 2 }, Report.Amounts("has now") with { Drops = 1 },
        Report.Amounts("proposed"), Report.Amounts("fill") with { MinWidth = TextColumns.Width(Proposed) }, new("why") { Shrinks = true, MinWidth = width < Roomy ? 16 : Math.Min(31, LongestWhy) },
    ];

    /// <inheritdoc/>
    protected override ImmutableArray<string> Totals =>
        ["Together", "", "", Proposed, Shown(Plan.Pots.Total), ""];

    private int LongestWhy => Plan.Pots.Rows.Max(row => TextColumns.Width(PotsReport.Cells(row, Style)[^1]));

    private string Proposed => Shown(Money.Sum(Plan.Pots.Rows.Select(row => row.Proposed), Plan.Pots.Total.Currency));

    private StepRow Row(PotRow row) => new(PotsReport.Cells(row, Style))
    {
        Rule = RuleTexts.Of(row.Pot.Kind),
        Sign = row.Cut.IsPositive ? '!' : row.Asks ? '?' : row.Changed ? '*' : ' ',
        Ink = row.Cut.IsPositive || row.Asks ? Ink.Alert : Ink.Plain,
        DetailHere = () => row.Asks ? [PotQuestion.Of(row, Style), PotAnswerKeys.Words(row, Plan.Period.First)] : Detail(row),
        Keys = row.Asks ? PotAnswerKeys.Of(row, Work) : [],
        Edit = Amount($"Fill {row.Pot.Name} with", row.Fill, (draft, amount) => draft with { Fills = draft.Fills.SetItem(row.Pot.Id, amount) }),
        Tick = () => Work.Decide(draft => draft with { Fills = draft.Fills.Remove(row.Pot.Id) }),
    };

    private ImmutableArray<string> Detail(PotRow row)
    {
        if (row.Pot.Place == Place.Account)
        {
            return [$"{row.Pot.Name}: in the account; {Shown(row.HasNow + row.Fill)} from today.", row.Why];
        }

        CashPotRow? cash = Plan.Withdrawal.Pots.FirstOrDefault(pot => pot.Pot.Id == row.Pot.Id);
        if (cash is null)
        {
            return [$"{row.Pot.Name}: nothing to withdraw.", row.Why];
        }

        string weeks = string.Join(", ", cash.Weeks.Select(week =>
            (week.Week is { } day ? $"week of {DateText.Short(day)} " : "at once ") + Shown(week.Amount)));
        string wishes = row.Pot.Notes switch
        {
            { TopNote: { } top, Small: { } small } => $"Notes: up to {Value(top)}, {Shown(small.AtLeast)} or more in {Value(small.Note)} or smaller",
            { TopNote: { } top } => $"Notes: up to {Value(top)}",
            { Small: { } small } => $"Notes: {Shown(small.AtLeast)} or more in {Value(small.Note)} or smaller",
            _ => "Notes: any",
        };
        string over = NotInNotesText.Of(Plan, cash, Style);
        return
        [
            $"{row.Pot.Name}: {weeks}.",
            $"{row.Why}. {(row.Cut.IsPositive && row.Pot.Floor.IsPositive ? $"A cut leaves at least {Shown(row.Pot.Floor)}. " : "")}{wishes}",
            .. over.Length == 0 ? Array.Empty<string>() : [over],
        ];
    }

    private string Value(Money note) => NoteText.Value(note.MinorUnits, note.Currency, Style);

    private Way TakeAll()
    {
        Work.Decide(draft => draft with { Fills = draft.Fills.Clear() });
        return Way.Stay;
    }
}
