using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Routines;

/// <summary>Step 6: the cash pots in notes.</summary>
internal sealed class WithdrawalView(RoutineWork work) : StepView(work)
{
    private const int MostNotes = 10_000;
    private readonly PerPlan<OwedBackOffer?> offer = new(OwedBackOffer.Of);
    private readonly PerPlan<WithdrawalRoom?> room = new(WithdrawalRoom.Of);
    private int column;

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Withdrawal;

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Keys =>
    [
        new(Key.Tab, "Tab", "next note", "To the next note value, which Enter or a digit changes.", () => Turn(1)),
        new(Key.Tab.WithShift, "Shift+Tab", "", "To the note value before.", () => Turn(-1)),
        Letters.Proposal.Does("proposal", "All notes as proposed.", () => Decided(draft => draft with { Notes = draft.Notes.Clear() })),
        Letters.KeepAtHome.Does("", "Keep the loose notes at home, or use them.", () => Decided(draft => draft with { LeavesNotesAtHome = !draft.LeavesNotesAtHome })),
        .. offer.Of(Plan) is null
            ? Array.Empty<Binding>()
            : [Letters.Return.Does("to pay back", "Take the notes that pots have to pay back to the bank, or use them for the withdrawal.", () => Decided(draft => draft with { UsesOwedBack = !draft.UsesOwedBack }))],
        Plan.Book.Household.Settings.Bank is CashSource.Machine
            ? Letters.Machine.Does("", "From the machine, or from a teller this time.", () => Decided(draft => draft with { AsksATeller = !draft.AsksATeller }))
            : Letters.Machine.Does("", "From the teller, or from a machine this time.", Machine),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Note plan", "which notes go to which pot and week: least value withdrawn, then fewest notes."),
        ("Lacks", "what the row's notes lack of its share, or have above it (-)."),
        ("Not in notes", "the part of a pot's fill that is in no share, as no note makes it; it waits in the account for the same pot."),
        ("Loose notes", "notes at home that are in no pot; they are used again before new ones are fetched."),
    ];

    /// <inheritdoc/>
    public override Said Note
    {
        get
        {
            NotePlan plan = Plan.Withdrawal.Plan;
            string reused = plan.ReusedTotal.IsZero ? "" : $", {Shown(plan.ReusedTotal)} reused ({NoteText.Listed(plan.Reused, plan.Currency, Style)})";
            string ways = offer.Of(Plan) is { } both ? $" {OfferText(both)}" : "";
            // The notes of the slip; where both ways to the bank are shown, those say how many.
            string count = ways.Length > 0 ? "" : $" ({"note".ToQuantity(plan.Withdraw.Pieces)})";
            return Plan.Withdrawal.Pots.FirstOrDefault(row => row.KeptBack.IsNegative) is { } over
                ? Said.Alert($"The notes for {over.Pot.Name} are {Shown(-over.KeptBack)} more than it has; lower one before the payday can be closed.")
                : room.Of(Plan) is { IsTooLittle: true } less
                    ? Said.Alert(ClosingTexts.Of(new ClosingFault.AccountHasLess(less.Has, less.Asked), Style))
                : plan.Faults.IsEmpty
                    ? Said.Quiet($"{Shown(plan.WithdrawTotal)} withdrawn{count}{reused}, {Shown(Plan.Withdrawal.KeptBack)} not in notes.{ways}")
                    : Said.Alert(NoteTexts.Of(plan.Faults[0], Style));
        }
    }

    /// <inheritdoc/>
    public override ImmutableArray<StepRow> Rows => [.. Plan.Withdrawal.Pots.SelectMany(row => row.Weeks.Select((week, i) => Row(row, week, i)))];

    /// <inheritdoc/>
    protected override ImmutableArray<TextColumn> Columns => ColumnsIn(Roomy);

    /// <inheritdoc/>
    protected override ImmutableArray<TextColumn> ColumnsIn(int width) =>
    [
        Report.Names("Pot") with { MinWidth = width < Roomy ? 10 : 12 }, new("week of"), Report.Amounts("share") with { Drops = 1 },
        .. Values.Select((note, i) => NoteColumn(NoteText.Value(note, Plan.Withdrawal.Plan.Currency, Style), i == Column)),
        Report.Amounts("lacks"),
    ];

    /// <inheritdoc/>
    protected override ImmutableArray<string> Totals
    {
        get
        {
            WeekPart[] parts = [.. Plan.Withdrawal.Pots.SelectMany(row => row.Weeks)];
            Money nothing = Money.Zero(Plan.Withdrawal.Plan.Currency);
            return
            [
                "Together", "", Shown(Money.Sum(parts.Select(part => part.Share), nothing.Currency)),
                .. Values.Select(note => parts.Sum(part => part.Notes[note]) is > 0 and var count ? count.ToString(CultureInfo.InvariantCulture) : "."),
                Shown(Money.Sum(parts.Select(part => part.Share - part.Amount), nothing.Currency)),
            ];
        }
    }

    // In brackets while Tab is on it; a sign of comparison would say something of the amount.
    private static TextColumn NoteColumn(string value, bool isHere) => new(isHere ? $"[{value}]" : $"{value} ", Align.Right) { MinWidth = Math.Max(4, TextColumns.Width(value) + 2) };

    private string OfferText(OwedBackOffer both)
    {
        (BankTrip now, BankTrip other) = Plan.Draft.UsesOwedBack ? (both.Together, both.Apart) : (both.Apart, both.Together);
        (string here, string there) = Plan.Draft.UsesOwedBack ? ("used here", "taken to the bank") : ("taken to the bank", "used here");
        return $"Notes to pay back {here}: {now.NotesCarried} notes carried, {Shown(now.Withdrawn)} withdrawn. "
            + $"With r, {there}: {other.NotesCarried} notes and {Shown(other.Withdrawn)}.";
    }

    private ImmutableArray<long> Values => [.. Plan.Book.Household.Settings.Cash.Notes.Select(note => note.MinorUnits).Union(Plan.Withdrawal.Loose.Values).OrderDescending()];

    /// <inheritdoc/>
    protected override int Beside => Column;

    private int Column => Math.Clamp(column, 0, Math.Max(0, Values.Length - 1));

    private StepRow Row(CashPotRow row, WeekPart week, int i)
    {
        string day = week.Week is { } date ? DateText.Short(date) : "";
        long value = Values[Column];
        int count = week.Notes[value];
        return new StepRow(
        [
            row.Pot.Name,
            day,
            Marked(week.Share, week.Changed),
            .. Values.Select(note => week.Notes[note] is > 0 and int notes ? notes.ToString(CultureInfo.InvariantCulture) : "."),
            Shown(week.Share - week.Amount),
        ])
        {
            Rule = RuleTexts.Notes,
            Sign = row.KeptBack.IsNegative ? '!' : week.Changed ? '*' : ' ',
            Ink = row.KeptBack.IsNegative ? Ink.Alert : Ink.Plain,
            Detail =
            [
                $"{$"{row.Pot.Name} {day}".TrimEnd()}: {NoteText.Listed(week.Notes, row.Amount.Currency, Style)} = {Shown(week.Amount)}.",
                row.KeptBack.IsNegative ? "These notes are more than the pot has; lower one." : row.KeptBack.IsZero ? NotInNotesText.First(Plan, Style) : NotInNotesText.Of(Plan, row, Style),
            ],
            Edit = new CellEdit(
                $"How many {NoteText.Value(value, row.Amount.Currency, Style)} for {row.Pot.Name} {day}".TrimEnd(),
                count.ToString(CultureInfo.InvariantCulture),
                text => int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number <= MostNotes
                    ? TooMany(row, week, value, number) ?? Work.Decide(draft => With(draft, row, week, value, number))
                    : $"Write a whole number of notes, at most {MostNotes}."),
            Tick = () => Work.Decide(draft => draft with { Notes = draft.Notes.Remove(new PartKey(row.Pot.Id, week.Week)) }),
        };
    }

    // What isn't in notes is never below zero: what goes in one envelope has to come out of another first.
    private string? TooMany(CashPotRow row, WeekPart week, long value, int number)
    {
        Money left = row.LeftWith(week, week.Notes.With(value, number));
        return number > week.Notes[value] && left.IsNegative
            ? $"{row.Pot.Name} has {Shown(row.Amount)}, and its notes would come to {Shown(row.Amount - left)}; lower another first."
            : null;
    }

    private static RoutineDraft With(RoutineDraft draft, CashPotRow row, WeekPart week, long value, int number)
    {
        Notes notes = week.Notes.With(value, number);
        return draft with { Notes = draft.Notes.SetItem(new PartKey(row.Pot.Id, week.Week), notes) };
    }

    // A household that asks tellers has named no machine: its notes are asked for.
    private Way Machine()
    {
        if (Plan.Draft.Machine is not null)
        {
            return Decided(draft => draft with { Machine = null });
        }

        CashPieces cash = Plan.Book.Household.Settings.Cash;
        return new Way.Edit(new CellEdit("The machine's notes / its limit each time", MachineText.Usual(cash, Style), text =>
        {
            Result<CashSource.Machine> machine = MachineText.Read(text, cash, Style);
            return machine.Ok ? Work.Decide(draft => draft with { Machine = machine.Value }) : FaultTexts.Of(machine.Fault, Style);
        }));
    }

    private Way Turn(int by)
    {
        column = (Column + by + Values.Length) % Values.Length;
        return Way.Stay;
    }

    private Way Decided(Func<RoutineDraft, RoutineDraft> decide)
    {
        Work.Decide(decide);
        return Way.Stay;
    }
}
