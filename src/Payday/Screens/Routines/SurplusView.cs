using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ids;
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

/// <summary>Step 5: where the rest goes.</summary>
internal sealed class SurplusView(RoutineWork work) : StepView(work)
{
    private readonly PerPlan<IdleMoney> idle = new(plan => new IdleMoney(IdleBuffer.Of(plan)));

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Surplus;

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Keys =>
    [
        Letters.Proposal.Does("proposal", "Take the proposal again.", () => Placed(null)),
        .. Idle.IsPositive ? [Letters.To.Does("", $"Take the {Shown(Idle)} that lie idle in the buffer, to be placed here.", PlaceIdle)] : Array.Empty<Binding>(),
        Letters.TakeOut.Does("", "Clear all that is placed, and begin anew.", () => Placed([])),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Left to place", "income and carried-over money minus all that has been placed; it must be zero to close, and zero is no fault."),
        ("Buffer", "account money deliberately left without another purpose."),
    ];

    /// <inheritdoc/>
    public override Said Note => Plan.Surplus.Before.IsNegative
        ? Said.Alert($"{Shown(-Plan.Surplus.Before)} is missing; " + (Rest.IsPositive ? $"the buffer has {Shown(Rest)} more (Income step)" : "no proposal can cover it"))
        : Said.Quiet(string.Join(' ', SurplusReport.Effects(Plan.Surplus, Style).Take(1).Concat(Idle.IsPositive ? [$"The buffer has {Shown(Idle)} more than it keeps and {IdleBuffer.Days} days need: t places it."] : Array.Empty<string>())));

    /// <inheritdoc/>
    public override ImmutableArray<StepRow> Rows => Plan.Surplus.Before.IsNegative
        ? [.. Plan.Unpayable.Select(Unpaid)]
        :
        [
            .. Plan.Book.Household.Debts.Where(debt => !After(debt.Id).IsZero).Select(debt => Target(MoveTarget.Debt(debt.Id), debt.Name, After(debt.Id), Course(debt.Id))),
            Target(MoveTarget.Buffer, "Buffer", null, "stays in the account, free"),
            .. Plan.Book.Household.Pots.Select(pot => Target(MoveTarget.Pot(pot.Id), pot.Name, null, Full(pot))),
        ];

    /// <inheritdoc/>
    protected override ImmutableArray<TextColumn> Columns => Plan.Surplus.Before.IsNegative
        ? [Report.Names("Can't be paid in full"), new("due"), Report.Amounts("amount"), Report.Amounts("short")]
        : [Report.Names("Place on"), Report.Amounts("owed"), Report.Amounts("place"), new("then")];

    private Money Idle => idle.Of(Plan).Idle;

    // What the buffer keeps is given by hand alone.
    private Money Rest => Plan.Income.Buffer.Has - Plan.Income.Buffer.Amount;

    private Money After(DebtId debtId) => Placing.MostOn(Plan, debtId);

    private StepRow Unpaid(Unpayable unpaid) => new(
        [ClosingTexts.Name(unpaid.Obligation), DateText.Weekday(unpaid.Obligation.Due), Shown(unpaid.Obligation.Amount), Shown(unpaid.Short)])
    {
        Rule = RuleTexts.Unpayable,
        Sign = '!',
        Ink = Ink.Alert,
        Detail =
        [
            "This payday can be saved but not closed until everything due is covered.",
            unpaid.Obligation.Kind == ObligationKind.Pot
                ? "Lower what goes in this pot by hand, in the Pots step."
                : Cautions.Talk,
        ],
    };

    private StepRow Target(MoveTarget target, string name, Money? owed, string then)
    {
        Money placed = Placing.On(Plan, target);
        return new StepRow([name, owed is { } balance ? Shown(balance) : "", placed.IsZero ? "" : Marked(placed, Plan.Surplus.Changed), then])
        {
            Rule = RuleTexts.Surplus,
            Sign = placed.IsZero ? ' ' : 'v',
            Ink = placed.IsZero ? Ink.Plain : Ink.Done,
            Detail = [Plan.LeftToPlace.IsPositive ? $"{name}: Space places here all that is left; Enter an amount." : $"{name}: Space moves the whole surplus here; Enter an amount.", .. SurplusReport.Effects(Plan.Surplus, Style).Skip(1).Take(1)],
            Edit = Amount($"Place on {name}", placed, amount => Decided(Deciding.Placement(Plan, target, amount))),
            Tick = () => Placed(Placing.Rest(Plan, target, owed)),
        };
    }

    private string Full(Pot pot) =>
        Plan.Surplus.Pots.FirstOrDefault(course => course.PotId == pot.Id) is { With: not null } course ? SurplusReport.Course(course, Plan.Period.First) : PotsReport.Place(pot);

    private string Course(DebtId debtId) => SurplusReport.Course(Plan.Surplus, debtId);

    // It is left to place then, and goes where the proposal or the person puts it.
    private Way PlaceIdle()
    {
        Work.Decide(draft => draft with { FromBuffer = Plan.Income.Buffer.Amount + Idle });
        return Way.Stay;
    }

    private Way Placed(ImmutableArray<Placement>? placements)
    {
        Work.Decide(draft => draft with { Placements = placements });
        return Way.Stay;
    }

    private sealed record IdleMoney(Money Idle);
}
