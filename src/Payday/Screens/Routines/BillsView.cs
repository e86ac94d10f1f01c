using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Routines;

/// <summary>Step 2: bills due in the period, then what is held for later ones.</summary>
internal sealed class BillsView(RoutineWork work) : StepView(work)
{
    private readonly PerPlan<SetAsideParts> parts = new(plan => SetAsideParts.Of(plan.Bills));

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Bills;

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Keys =>
    [
        Letters.Even.Does(Plan.Bills.Mode == SetAsideMode.Level ? "when due" : "even", "Set aside an even part of every pay, or only what falls due in this period; what changes is shown first.", Switch),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("0.00", "as a bill's amount waives it this time: nothing is due and what was set aside for it goes to later bills."),
        ("Set aside", "money in the account for a bill, before today."),
        ("Today", "added today to what is set aside for the bill; below zero where a bill due sooner needs it."),
        ("Even", "an even part of every pay: the evenest plan over the next 13 months that is never late."),
        ("When due", "each payday sets aside only what falls due before the next one."),
    ];

    /// <inheritdoc/>
    public override Said Note => Plan.Bills.Late.IsEmpty
        ? Said.Quiet(string.Join(' ', BillsReport.Given(Plan.Bills, Style).Prepend(BillsReport.Reason(Plan.Bills, Style))))
        : Said.Alert($"{Plan.Bills.Late[0].Due.Name}, {DateText.Weekday(Plan.Bills.Late[0].Due.Date)}: {Shown(Plan.Bills.Late[0].Short)} short with the pay expected");

    /// <inheritdoc/>
    public override ImmutableArray<StepRow> Rows =>
        [.. Plan.Bills.Dues.Select(Due), .. Plan.Bills.ByNextDue.Where(line => !Parts.Later(line.BillId).Held.IsZero || !Parts.Later(line.BillId).SetAside.IsZero).Select(Held)];

    /// <inheritdoc/>
    protected override ImmutableArray<TextColumn> Columns =>
        [Report.Names("Bill"), new("due"), Report.Amounts("amount"), Report.Amounts("set aside"), Report.Amounts("today"), new("")];

    /// <inheritdoc/>
    protected override ImmutableArray<string> Totals => ["Together", "", "", Shown(Plan.Bills.Held), Shown(Plan.Bills.Total), ""];

    private SetAsideParts Parts => parts.Of(Plan);

    private StepRow Due(DueRow row) => new(
    [
        row.Name,
        DateText.Weekday(row.Date),
        Marked(row.Amount, row.Changed && row.Amount != row.Usual),
        Shown(Parts.For(row.Key).Held),
        Shown(Parts.For(row.Key).SetAside),
        row.Paid ? "paid" : "to pay",
    ])
    {
        Rule = RuleTexts.Due,
        Sign = row.Paid ? RowSigns.Done : row.Changed ? '*' : ' ',
        Ink = row.Paid ? Ink.Done : Ink.Plain,
        Detail = [$"{row.Name}, due {DateText.Long(row.Date)}, usually {Shown(row.Usual)}.", row.Paid ? row.Date < Plan.Period.First ? StepTexts.TakenAsPaid : StepTexts.Paid : "It stays set aside until it is paid; the next payday takes it up again."],
        Edit = Amount($"{row.Name} comes to", row.Amount, (draft, amount) => draft with
        {
            Dues = draft.Dues.SetItem(row.Key, new DueDecision(amount, draft.Dues.GetValueOrDefault(row.Key)?.Paid)),
        }),
        TickLabel = row.Paid ? StepTexts.NotPaid : "",
        Tick = () => Work.Decide(draft => draft with
        {
            Dues = draft.Dues.SetItem(row.Key, new DueDecision(draft.Dues.GetValueOrDefault(row.Key)?.Actual, !row.Paid)),
        }),
    };

    private StepRow Held(SetAsideLine line) => Held(line, Ahead(line));

    private StepRow Held(SetAsideLine line, ImmutableArray<Due> ahead) => new(
    [
        line.Name,
        line.NextDue is { } next ? DateText.Short(next) : "",
        line.NextDue is null ? "" : Shown(line.NextAmount),
        Shown(Parts.Later(line.BillId).Held),
        Shown(Parts.Later(line.BillId).SetAside),
        ahead.Length > 1 ? $"{ahead.Length} dues" : "not yet",
    ])
    {
        Rule = RuleTexts.Later,
        Ink = Ink.Quiet,
        NoEdit = $"{line.Name} isn't due before the next payday: its amount is typed on the payday that is due for it, or for good in the household (h at home).",
        NoTick = $"{line.Name} isn't due before the next payday, so there is nothing of it to tick yet.",
        Detail =
        [
            line.NextDue is { } date
                ? $"{line.Name}: {Shown(ForLater(line))} set aside for it from today; {(ahead.Length > 1 ? string.Join(", then ", ahead.Select(due => $"{Shown(due.Amount)} on {DateText.Short(due.Date)}")) : $"next {Shown(line.NextAmount)} on {DateText.Long(date)}")}."
                : $"{line.Name}: {Shown(ForLater(line))} set aside for it from today; no later due is known.",
            BillsReport.Given(Plan.Bills, line.BillId, Style),
        ],
    };

    // More than the next due is for several, and a row of one date and amount has to say so.
    private ImmutableArray<Due> Ahead(SetAsideLine line) => LaterDues.Of(Plan, line, ForLater(line));

    private Money ForLater(SetAsideLine line) => Parts.Later(line.BillId).Held + Parts.Later(line.BillId).SetAside;

    private Way.To Switch()
    {
        SetAsideMode other = Plan.Bills.Mode == SetAsideMode.Level ? SetAsideMode.AsTheyFall : SetAsideMode.Level;
        return new Way.To(new SetAsidesScreen(Work, other));
    }
}
