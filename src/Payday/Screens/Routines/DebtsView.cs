using System.Collections.Immutable;
using Humanizer;
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

/// <summary>Step 3: at least the minimum on every debt.</summary>
internal sealed class DebtsView(RoutineWork work) : StepView(work)
{
    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.DebtMinimums;

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Keys =>
    [
        Letters.Proposal.Does("all proposed", "Pay the minimum on every debt again.", TakeAll),
    ];

    /// <inheritdoc/>
    public override Said Note => Said.Quiet(
        $"{Shown(Plan.Debts.Due)} to pay on {"minimum".ToQuantity(Plan.Debts.Rows.Count(row => row.Due is not null))}{(Plan.Debts.Total == Plan.Debts.Due ? "" : $", {Shown(Plan.Debts.Total)} of it from this payday")}");

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Minimum", "the least that must be paid on a debt this month; the lender's statement decides."),
    ];

    /// <inheritdoc/>
    public override ImmutableArray<StepRow> Rows => [.. Plan.Debts.Rows.Select(Row)];

    /// <inheritdoc/>
    protected override ImmutableArray<TextColumn> Columns => DebtTable.Columns;

    /// <inheritdoc/>
    protected override ImmutableArray<string> Totals => DebtTable.Totals(Plan.Debts, Style);

    private StepRow Row(DebtRow row) => new(DebtTable.Cells(row, Style))
    {
        Rule = RuleTexts.Minimum,
        Sign = row.Payment < row.Minimum ? '!' : row.Paid ? RowSigns.Done : row.Changed || row.IsTicked ? '*' : ' ',
        Ink = row.Payment < row.Minimum ? Ink.Alert : row.Due is null ? Ink.Quiet : row.Paid ? Ink.Done : Ink.Plain,
        Detail = Detail(row),
        NoEdit = row.Balance.IsZero ? $"{row.Name} is paid off: nothing is owed on it." : $"{row.Name}: no minimum falls due before the next payday. More can be paid on it in the Surplus step.",
        NoTick = row.Balance.IsZero ? $"{row.Name} is paid off: nothing is owed on it." : $"{row.Name}: no minimum falls due before the next payday, so there is nothing of it to tick yet.",
        Edit = row.Due is null ? null : Amount($"Pay on {row.Name}", row.Payment, amount => Decided(Deciding.Minimum(Plan, row, amount))),
        TickLabel = row.Paid ? StepTexts.NotPaid : "",
        Tick = row.Due is null ? null : () => Work.Decide(draft => draft with { PaidMinimums = draft.PaidMinimums.SetItem(row.Key!.Value, !row.Paid) }),
    };

    private ImmutableArray<string> Detail(DebtRow row)
    {
        if (row.Due is null)
        {
            return [$"{row.Name}: no minimum falls due in this period."];
        }

        string split = $"{row.Name}: {Shown(row.Payment)} pays {Shown(row.Interest)} interest and {Shown(row.Payment - row.Interest)} of the balance{(row.Bought.IsPositive ? $"; {Shown(row.Bought)} of it was bought with the card and waits in the account for it" : "")}.";
        bool never = Plan.Surplus.Without.Never.Contains(row.DebtId);
        string end = row.NewBalance.IsZero ? "That is all that is owed, so it is paid off. " : "";
        return [split, end + (row.Payment < row.Minimum ? "That is below the minimum." : never ? "At its minimum it never ends. Pay more, or talk to the lender." : row.Paid ? row.Due < Plan.Period.First ? StepTexts.TakenAsPaid : StepTexts.Paid : "It stays set aside until it is paid; the next payday takes it up again.")];
    }

    private Way TakeAll()
    {
        Work.Decide(draft => draft with { Minimums = draft.Minimums.Clear(), DebtPayments = draft.DebtPayments.Clear(), PaidMinimums = draft.PaidMinimums.Clear() });
        return Way.Stay;
    }
}
