using System.Collections.Immutable;
using System.Drawing;
using Humanizer;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Routines;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Routines;

/// <summary>The payday routine: seven steps, with what is left to place always in view.</summary>
internal sealed class RoutineScreen : Screen
{
    // The title, the steps, the table's header and the rule under it.
    private const int HeadLines = 4;

    // So many rows stay in view; what is said of the step and then of the row gives way to them.
    private const int FewestRows = 6;

    private const string WhyHelp = "Says why this row has nothing to change.";

    private readonly RoutineWork work;
    private readonly ImmutableArray<StepView> views;
    private readonly RowCursor cursor;
    private RoutineStep step;

    private RoutineScreen(BookSession session, RoutinePlan plan)
    {
        work = new RoutineWork(session, plan, dropped => Message = dropped, news => News = news);
        views =
        [
            new IncomeView(work), new BillsView(work), new DebtsView(work), new PotsView(work),
            new SurplusView(work), new WithdrawalView(work), new SlipView(work),
        ];
        step = work.Plan.Draft.Step;
        cursor = new RowCursor(() => View.RowsNow.Length);
    }

    /// <inheritdoc/>
    public override string Title => $"{StepBar.Name(step)}, step {(int)step} of 7";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
        Row?.Rule is { Length: > 0 } rule ? [("The rule of this row", rule), .. View.Words] : View.Words;

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Bindings =>
    [
        .. Row?.Edit is null ? Array.Empty<Binding>() : [new Binding(Key.Enter, "Enter", "change", $"Change the figure of this row; a sum like {work.Session.Style.Written("12.50+3")} is taken.", () => new Way.Edit(Row!.Edit!))],
        .. Row is { Edit: null, NoEdit.Length: > 0 } ? [new Binding(Key.Enter, "Enter", "", WhyHelp, () => Say(Row!.NoEdit))] : Array.Empty<Binding>(),
        .. Row?.Tick is null ? Array.Empty<Binding>() : [new Binding(Key.Space, "Space", TickLabel, TickHelp, Tick)],
        .. Row is { Tick: null, NoTick.Length: > 0 } ? [new Binding(Key.Space, "Space", "", WhyHelp, () => Say(Row!.NoTick))] : Array.Empty<Binding>(),
        .. Row?.Keys ?? [],
        .. View.Keys,
        .. cursor.Keys,
        .. step > RoutineStep.Income ? [new Binding(Key.CursorLeft, "Left", "", "To the step before.", () => Turn(-1))] : Array.Empty<Binding>(),
        .. step < RoutineStep.Slip ? [new Binding(Key.CursorRight, "Right", "next", "To the next step; this one is kept as it is.", () => Turn(1))] : Array.Empty<Binding>(),
        ShellKeys.Help(this),
        new(Key.Esc, "Esc", "home", "Home; everything is kept, and the next time goes on here.", () => Way.Back),
    ];

    private StepView View => views[(int)step - 1];

    private StepRow? Row => View.RowsNow is { IsEmpty: false } rows ? rows[cursor.Of(rows.Length)] : null;

    // In the withdrawal the bottom line's room is for the keys of its notes.
    private string TickLabel => Row is { TickLabel: { Length: > 0 } own } ? own : step switch
    {
        RoutineStep.Bills or RoutineStep.DebtMinimums => "paid",
        RoutineStep.Surplus => "put here",
        RoutineStep.Withdrawal => "",
        _ => "proposed",
    };

    private string TickHelp => step switch
    {
        RoutineStep.Bills => "Mark the bill paid, or not.",
        RoutineStep.DebtMinimums => "Tick the minimum as paid, or not.",
        RoutineStep.Surplus => "Put here all that is left to place; with nothing left, the whole surplus.",
        _ => "This row as proposed again.",
    };

    /// <summary>Opens the routine of the next payday, or goes on with the one begun.</summary>
    public static Result<RoutineScreen> Open(BookSession session)
    {
        Result<RoutineDraft> draft = Routine.Begun(session.Book);
        if (!draft.Ok)
        {
            return Result.Refused<RoutineScreen>(draft.Fault);
        }

        Result<RoutinePlan> plan = Routine.Plan(session.Book, draft.Value);
        return plan.Ok ? Result.Of(new RoutineScreen(session, plan.Value.Foreseen())) : Result.Refused<RoutineScreen>(plan.Fault);
    }

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        if (!char.IsAsciiDigit(text[0]) && text != "-")
        {
            return null;
        }

        if (Row?.Edit is { } edit)
        {
            return edit with { Text = text };
        }

        Message = Row?.NoEdit ?? "";
        return null;
    }

    /// <inheritdoc/>
    public override TextFrame Draw(Size size)
    {
        int width = size.Width;
        ImmutableArray<StepRow> rows = View.RowsNow;
        (ImmutableArray<string> header, ImmutableArray<string> lines, string totals) = View.Table(rows, width - 2);
        FrameLine[] sum = [.. totals.Length == 0 ? Array.Empty<FrameLine>() : [FrameLine.Of("  " + totals, Ink.Strong)]];
        int room = size.Height - HeadLines - sum.Length - Standing(width) - 2 - Math.Min(rows.Length, FewestRows);
        FrameLine[] foot = [.. sum, .. Foot(width, room)];
        int here = cursor.Of(rows.Length);
        cursor.Show(rows.Length, size.Height - HeadLines - foot.Length - 1);
        return TextFrame.Of(
            size,
            [.. Head(width), .. header.Take(1).Select(line => FrameLine.Of("  " + line, Ink.Strong)), FrameLine.Rule(width)],
            lines.IsEmpty
                ? [FrameLine.Of(" Nothing here this time. Right goes on.")]
                : lines.Select((line, i) => Line(rows[i], line, i == here)).Skip(cursor.First).Take(cursor.Room),
            [Below(rows.Length, width), .. foot]);
    }

    /// <inheritdoc/>
    public override int Standing(int width) => SumLine.Of(work.Plan, width).Count();

    private IEnumerable<FrameLine> Head(int width)
    {
        RoutinePlan plan = work.Plan;
        int fillDays = plan.Period.FillDays(plan.Book.Household.Settings.FillDay).Length;
        string extra = plan.Payday.IsExtra ? " (extra payday)" : "";
        int days = Period.DaysBetween(work.Session.Today, plan.Period.First);
        string payday = days > 1 ? $"{DateText.Weekday(plan.Period.First)}, still {"day".ToQuantity(days)} off" : DateText.Long(plan.Period.First);
        yield return FrameLine.Of(
            TextColumns.Ends(
                $" Payday of {payday}{extra}",
                $"{(width < TextFrame.Complete.Width ? "" : "covers ")}{DateText.Short(plan.Period.First)} to {DateText.Short(plan.Period.Last)}, {"fill day".ToQuantity(fillDays)} ",
                width),
            Ink.Strong);
        yield return StepBar.Of(step, plan, width);
    }

    // Only the name of the row under the cursor is marked, not all of it: half the bytes of a key over a slow line.
    private static FrameLine Line(StepRow row, string text, bool here)
    {
        if (!here)
        {
            return FrameLine.Of($"{row.Sign} {text}", row.Ink);
        }

        int gap = text.IndexOf("  ", StringComparison.Ordinal);
        int name = gap < 0 ? text.Length : gap;
        return new FrameLine([new Span(row.Sign.ToString(), row.Ink), new Span(">" + text[..name], Ink.Here), .. FrameLine.Of(text[name..], row.Ink).Spans]);
    }

    private FrameLine Below(int rows, int width)
    {
        int below = cursor.Below(rows);
        return FrameLine.Rule(width, below > 0 ? $" {below} more below " : "");
    }

    private IEnumerable<FrameLine> Foot(int width, int room)
    {
        StepRow? here = Row;
        string[] detail = Fitting([.. (here?.Detail ?? []).Select(line => TextWrap.Lines(line, width - 2).ToArray())], room);
        FrameLine[] row = [.. detail.Concat(Enumerable.Repeat("", Math.Max(0, Math.Min(room, View.DetailLines) - detail.Length))).Select(line => FrameLine.Of(" " + line))];

        // A longer one takes the room of a note that isn't there, so that the table stands still.
        FrameLine[] note = [.. Said.Lines([View.Note], width).Skip(View.Note.Text.Length == 0 ? Math.Max(0, detail.Length - View.DetailLines) : 0)];
        note = row.Length + note.Length <= room || View.Note.Ink == Ink.Alert ? note : [];

        // A message takes the place of what is said of the step, then of the row: what is left to place and the keys stay in view.
        FrameLine[] message = [.. TextWrap.Lines(Message, width - 2).Select(line => FrameLine.Of(" " + line, MessageInk))];
        FrameLine[] said = Message.Length == 0
            ? [.. row, .. note]
            : [.. row.Take(Math.Max(0, row.Length + note.Length - message.Length)), .. Enumerable.Repeat(FrameLine.Empty, Math.Max(0, note.Length - message.Length)), .. message];
        return [.. said, .. SumLine.Of(work.Plan, width), KeyBar.Of(Bindings, width)];
    }

    // Whole sentences, as many as there is room for, and the first in any case.
    private static string[] Fitting(string[][] sentences, int room)
    {
        int used = 0;
        return [.. sentences.TakeWhile((lines, i) => (used += lines.Length) <= room || i == 0).SelectMany(lines => lines)];
    }

    private Way Tick()
    {
        Row?.Tick?.Invoke();
        return Way.Stay;
    }

    private Way Say(string why)
    {
        Message = why;
        return Way.Stay;
    }

    private Way Turn(int by)
    {
        var next = (RoutineStep)Math.Clamp((int)step + by, (int)RoutineStep.Income, (int)RoutineStep.Slip);
        if (next > RoutineStep.Surplus && next > step && !work.Plan.LeftToPlace.IsZero)
        {
            Message = work.Plan.LeftToPlace.IsNegative
                ? $"{(-work.Plan.LeftToPlace).ToString(work.Session.Style)} is missing: lower a bill, a minimum or a pot, or enter more income, before going on."
                : $"Place what is left before going on, until {Money.Zero(work.Plan.LeftToPlace.Currency).ToString(work.Session.Style)} is left.";
            return Way.Stay;
        }

        if (work.Decide(draft => draft with { Step = next }) is { } fault)
        {
            Message = fault;
        }

        step = next;
        cursor.ToTop();
        return Way.Stay;
    }
}
