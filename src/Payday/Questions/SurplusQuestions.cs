using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Routines;
using Payday.Text;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>Step 5: where the rest goes; or that it doesn't fit.</summary>
internal sealed class SurplusQuestions(RoutineWork work) : StepQuestions(work)
{
    private readonly SurplusView view = new(work);

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Surplus;

    /// <inheritdoc/>
    public override IEnumerable<string> Opening =>
    [
        $"{Shown(Plan.Income.CameIn)} came in. {Shown(Plan.Bills.Total)} goes to bills, {Shown(Plan.Debts.Total)} to debts, {Shown(Plan.Pots.Total)} in pots.",
        Plan.Surplus.Before.IsZero ? "Nothing is left, so there is nothing to place." : "",
    ];

    /// <inheritdoc/>
    public override IEnumerable<Question> All => Plan.LeftToPlace.IsNegative ? [Short()] : Plan.Surplus.Before.IsZero && !Idle.IsPositive ? [] : [Place()];

    private Money Idle => IdleBuffer.Of(Plan);

    private Question Short() => new(
        "short",
        $"It doesn't fit: {Shown(-Plan.LeftToPlace)} is missing, so this payday can be kept but not closed. back leads to what can be lowered; stop keeps it.",
        _ => new Taken.Refused("More is placed than there is; lower something before going on."))
    {
        Help =
        [
            .. Plan.Unpayable.Select(unpaid => $"{ClosingTexts.Name(unpaid.Obligation)}, due {DateText.Weekday(unpaid.Obligation.Due)}: {Shown(unpaid.Short)} short of {Shown(unpaid.Obligation.Amount)}."),
            RuleTexts.Unpayable,
            Cautions.Talk,
        ],
        Words = view.Words,
    };

    private Question Place()
    {
        string placed = Plan.Surplus.Placements.Select(placement => $"{Shown(placement.Amount)} on {Name(placement.Target)}").Humanize("and");
        string now = placed.Length == 0 ? "Nothing of it is placed." : $"{placed}{(Plan.Surplus.Changed ? "" : " proposed")}.";
        string left = Plan.LeftToPlace.IsPositive ? $" {Shown(Plan.LeftToPlace)} is left to place." : "";
        return new Question("surplus", $"{Shown(Plan.Surplus.Before)} is surplus. {now}{left} Where does it go?", Take)
        {
            Help =
            [
                "Type a name, and all that is left goes there; with nothing left, the whole surplus does. Or a name and an amount, like Food=20.",
                Targets.Names,
                "proposal takes the proposal again, clear takes all of it away.",
                .. Idle.IsPositive ? [$"The buffer has {Shown(Idle)} more than it keeps and {IdleBuffer.Days} days need: idle has it placed here."] : Array.Empty<string>(),
                .. SurplusReport.Effects(Plan.Surplus, Work.Session.Style),
                SurplusReport.Other(Plan.Surplus, Work.Session.Style),
                RuleTexts.Surplus,
            ],
            Words = view.Words,
        };
    }

    private Taken Take(string answer)
    {
        switch (answer.ToUpperInvariant())
        {
            case "":
                return Plan.LeftToPlace.IsZero ? Taken.On : new Taken.Refused($"Place what is left before going on, until {Shown(Money.Zero(Plan.LeftToPlace.Currency))} is left.");
            case "PROPOSAL":
                return Placed(null);
            case "CLEAR":
                return Placed([]);
            case "IDLE" when Idle.IsPositive:
                return Work.Decide(draft => draft with { FromBuffer = Plan.Income.Buffer.Amount + Idle }) is { } fault ? new Taken.Refused(fault) : new Taken.Again("");
            default:
                return PlaceOn(answer);
        }
    }

    // The last equals sign stands before the amount: a name may have one too.
    private Taken PlaceOn(string answer)
    {
        int at = answer.LastIndexOf('=');
        if (Targets.Find(at < 0 ? answer : answer[..at].Trim(), out StepRow row) is { } unknown)
        {
            return new Taken.Refused(unknown);
        }

        if (at < 0)
        {
            row.Tick!();
            return new Taken.Again("");
        }

        return row.Edit!.Accept(answer[(at + 1)..]) is { } fault ? new Taken.Refused(fault) : new Taken.Again("");
    }

    private Taken Placed(ImmutableArray<Placement>? placements) =>
        Work.Decide(draft => draft with { Placements = placements }) is { } fault ? new Taken.Refused(fault) : new Taken.Again("");

    private string Name(MoveTarget target) => target.NameIn(Plan.Book.Household) ?? "";

    private NamedChoice<StepRow> Targets => new([.. view.Rows.Select(row => (CleanText.OneLine(row.Cells[0]), row))]);
}
