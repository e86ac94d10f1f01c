using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Debts;
using Payday.Core.Faults;
using Payday.Core.Households;
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
    private readonly PerPlan<Dictionary<PotId, PotCourse>> pots = new(plan => PotCourse.Of(plan).ToDictionary(course => course.PotId));
    private readonly PerPlan<Dictionary<BillId, string>> billNames = new(plan => plan.Book.Household.Bills.ToDictionary(bill => bill.Id, bill => bill.Name));
    private readonly PerPlan<ILookup<DebtId, DebtRow>> minimums = new(plan => plan.Debts.Rows.ToLookup(row => row.DebtId));
    private readonly PerPlan<ImmutableArray<BillCourse>> bills = new(BillCourse.Of);
    private readonly PerPlan<ImmutableArray<DebtChange>> debts = new(plan => plan.Surplus.Debts);
    private readonly PerPlan<string> note = new(plan => string.Join(' ', SurplusReport.Now(plan.Surplus, plan.Book.Household.Settings.Numbers)
        .Append(SurplusReport.Other(plan.Surplus, plan.Book.Household.Settings.Numbers)).Where(sentence => sentence.Length > 0)));

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
        ("To go", "of a debt what is owed once its minimum and the interest until then are reckoned, as Debt minimums has it; of a pot or a bill what it lacks."),
        ("Left to place", "income and carried-over money minus all that has been placed; it must be zero to close, and zero is no fault."),
        ("Buffer", "account money deliberately left without another purpose."),
    ];

    /// <inheritdoc/>
    public override Said Note => Plan.Surplus.Before.IsNegative
        ? Said.Alert($"{Shown(-Plan.Surplus.Before)} is missing; " + (Rest.IsPositive ? $"the buffer has {Shown(Rest)} more (Income step)" : "no proposal can cover it"))
        : Said.Quiet(string.Join(' ', new[] { note.Of(Plan) }.Where(sentence => sentence.Length > 0).Concat(Idle.IsPositive ? [$"The buffer has {Shown(Idle)} more than it keeps and {IdleBuffer.Days} days need: t places it."] : Array.Empty<string>())));

    /// <inheritdoc/>
    public override ImmutableArray<StepRow> Rows => Plan.Surplus.Before.IsNegative
        ? [.. Plan.Unpayable.Select(Unpaid)]
        :
        [
            .. debts.Of(Plan).Where(debt => !After(debt.After.Id).IsZero).Select(Debt),
            Target(MoveTarget.Buffer, "Buffer", null, null, "", "stays in the account, free"),
            .. Plan.Pots.Rows.Select(Pot),
            .. bills.Of(Plan).Where(bill => bill.Lacks.IsPositive || !Placing.On(Plan, MoveTarget.Bill(bill.BillId)).IsZero).Select(Bill),
        ];

    /// <inheritdoc/>
    public override int DetailLines => 3;

    /// <inheritdoc/>
    protected override ImmutableArray<TextColumn> Columns => Plan.Surplus.Before.IsNegative
        ? [Report.Names("Can't be paid in full"), new("due"), Report.Amounts("amount"), Report.Amounts("short")]
        : [Report.Names("Place on"), Report.Amounts("to go"), Report.Amounts("place"), new("done"), new("as placed now") { Shrinks = true, MinWidth = 10, Drops = 1 }];

    /// <inheritdoc/>
    protected override ImmutableArray<string> Totals => Plan.Surplus.Before.IsNegative
        ? ["Together", "", Shown(Sum(Plan.Unpayable.Select(unpaid => unpaid.Obligation.Amount))), Shown(Sum(Plan.Unpayable.Select(unpaid => unpaid.Short)))]
        : ["Together", "", Shown(Plan.Surplus.Placed), "", ""];

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

    private Money Sum(IEnumerable<Money> amounts) => Money.Sum(amounts, Plan.Surplus.Before.Currency);

    private StepRow Debt(DebtChange debt) => Target(
        MoveTarget.Debt(debt.After.Id), debt.After.Name, After(debt.After.Id), ToGo(debt.After.Id), SurplusReport.End(debt.After), SurplusReport.Change(debt, Style)) with
    {
        LastInShort = SurplusReport.ShortChange(debt, Style),
    };

    // What Debt minimums says is owed then: with the interest that comes until its due, unless all of it is paid today.
    private Money ToGo(DebtId debtId) => minimums.Of(Plan)[debtId].LastOrDefault()?.NewBalance ?? After(debtId);

    private StepRow Pot(PotRow row)
    {
        var target = MoveTarget.Pot(row.Pot.Id);
        if (!pots.Of(Plan).TryGetValue(row.Pot.Id, out PotCourse? course))
        {
            return Target(target, row.Pot.Name, null, null, "", row.Pot.Place == Core.Ledgers.Place.Cash ? "in cash" : "in the account");
        }

        string fill = course.NextWith == course.NextWithout ? "" : $"then {Shown(course.NextWith)}, not {Shown(course.NextWithout)}";
        return Target(target, row.Pot.Name, null, course.Lacks, SurplusReport.End(course.With, Plan.Period.First), fill);
    }

    private StepRow Bill(BillCourse course) => Target(
        MoveTarget.Bill(course.BillId), billNames.Of(Plan)[course.BillId], course.Lacks, course.Lacks,
        SurplusReport.End(course.With, Plan.Period.First), $"due {DateText.Short(course.Due)}");

    private StepRow Target(MoveTarget target, string name, Money? most, Money? toGo, string done, string does)
    {
        Money placed = Placing.On(Plan, target);
        return new StepRow([name, toGo is { } lacks ? Shown(lacks) : "", placed.IsZero ? "" : Marked(placed, Plan.Surplus.Changed), done, does])
        {
            Rule = RuleTexts.Surplus,
            Sign = placed.IsZero ? ' ' : RowSigns.Done,
            Ink = placed.IsZero ? Ink.Plain : Ink.Done,
            DetailHere = () => Detail(target, name, most),
            Edit = Amount($"Place on {name}", placed, amount => Place(target, amount)),
            Tick = () => Take(target, Placing.Rest(Plan, target, most)),
        };
    }

    // What Space would do here; where it would do nothing, what is placed here does to the others.
    private ImmutableArray<string> Detail(MoveTarget target, string name, Money? most)
    {
        PlacingTrial trial = PlacingTrial.Of(Plan, target, most);
        if (trial.Amount == Placing.On(Plan, target))
        {
            string spared = target is MoveTarget.ToDebt to && trial.Amount == most && ToGo(to.Id) - trial.Amount is { IsPositive: true } interest
                ? $" Paid today, its {Shown(interest)} of interest isn't charged."
                : "";
            string all = trial.Amount == most ? "all that it can take" : trial.Amount.IsZero ? "nothing" : "the whole surplus";
            return [$"{name}: {all} is placed here; Enter changes the amount.{spared}", .. SurplusReport.Elsewhere(Plan.Surplus, debts.Of(Plan), target).Take(1)];
        }

        string what = Plan.LeftToPlace.IsPositive ? "the rest" : "the surplus";
        string does = target switch
        {
            MoveTarget.ToDebt => $": paid off {SurplusReport.End(trial.Own!.After)}{(SurplusReport.Change(trial.Own, Style) is { Length: > 0 } change ? ", " + change : "")}",
            MoveTarget.ToPot to => PotCourse.Of(Plan, trial.Placements).FirstOrDefault(pot => pot.PotId == to.Id) is { With: { } full } ? $": then full {On(full)}" : "",
            MoveTarget.ToBill to => BillCourse.Of(Plan, trial.Placements).FirstOrDefault(bill => bill.BillId == to.Id) is { With: { } whole } ? $": then whole {On(whole)}" : "",
            _ => "",
        };
        return [$"{name}: Space puts {what} here, {Shown(trial.Amount)} in all{does}.", .. Worse(target), .. SurplusReport.Elsewhere(Plan.Surplus, trial.Debts, target).Take(1)];
    }

    // What stands beside a debt as its loss is explained here.
    private IEnumerable<string> Worse(MoveTarget target) => debts.Of(Plan)
        .Where(change => MoveTarget.Debt(change.After.Id) == target)
        .Select(change => SurplusReport.Worse(Plan.Surplus, change, Style))
        .Where(sentence => sentence.Length > 0);

    private string On(LocalDate day) => day == Plan.Period.First ? "today" : $"on {SurplusReport.Day(day)}";

    private string? Place(MoveTarget target, Money amount)
    {
        Result<RoutineDraft> placed = Deciding.Placement(Plan, target, amount);
        return placed.Ok ? Take(target, placed.Value.Placements!.Value) : FaultTexts.Of(placed.Fault, Style);
    }

    // What gave way is said, so that nobody has to find it.
    private string? Take(MoveTarget target, ImmutableArray<Placement> placements)
    {
        ImmutableArray<Placement> gaveWay = Placing.GaveWay(Plan, placements, target);
        string? fault = Work.Decide(draft => draft with { Placements = placements });
        if (fault is null && !gaveWay.IsEmpty)
        {
            Work.Tell($"Taken from {string.Join(", ", gaveWay.Select(one => $"{one.Target.NameIn(Plan.Book.Household)} ({Shown(one.Amount)})"))}.");
        }

        return fault;
    }

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
