using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Routines;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Questions;

/// <summary>The payday routine, step by step: gone on with from the step at which it was left, here or on the full screen.</summary>
internal sealed class RoutinePart : Part
{
    private readonly RoutineWork work;
    private readonly ImmutableArray<StepQuestions> steps;
    private readonly LocalDate payday;
    private string told = "";

    private RoutinePart(BookSession session, RoutinePlan plan)
    {
        work = new RoutineWork(session, plan, dropped => told = dropped);
        payday = plan.Period.First;
        steps =
        [
            new IncomeQuestions(work), new BillQuestions(work), new DebtQuestions(work), new PotQuestions(work),
            new SurplusQuestions(work), new WithdrawalQuestions(work), new ClosingQuestions(work),
        ];
    }

    /// <inheritdoc/>
    public override string Name => NameOf(payday);

    /// <inheritdoc/>
    public override string Empty => "The payday is closed.";

    /// <inheritdoc/>
    public override string? First => Questions.FirstOrDefault(question => StepOf(question.Id) >= work.Plan.Draft.Step)?.Id;

    /// <inheritdoc/>
    public override IReadOnlyList<Question> Questions
    {
        get
        {
            var all = new List<Question>();
            foreach (StepQuestions step in steps)
            {
                // What is left is placed before the notes are asked for.
                if (step.Step > RoutineStep.Surplus && !work.Plan.LeftToPlace.IsZero)
                {
                    break;
                }

                all.AddRange(step.All.Select(question => question with
                {
                    Id = $"{(int)step.Step} {question.Id}",
                    Under = $"step {(int)step.Step}",
                    Heading = () => Heading(step),
                    Take = answer => Told(question.Take(answer), step.Step),
                }));
            }

            return all;
        }
    }

    /// <summary>The routine of the next payday, or the one begun; or why there is none.</summary>
    public static Result<RoutinePart> Of(BookSession session)
    {
        Result<RoutinePlan> plan = Routine.Begun(session.Book).Then(draft => Routine.Plan(session.Book, draft));
        return plan.Map(known => new RoutinePart(session, known));
    }

    /// <summary>What the routine of a payday is called.</summary>
    public static string NameOf(LocalDate payday) => $"payday {payday:uuuu-MM-dd}";

    /// <inheritdoc/>
    public override void Reached(Question question)
    {
        RoutineStep step = StepOf(question.Id);
        if (work.Plan.Draft.Step != step || work.Session.Book.Draft is null)
        {
            work.Decide(draft => draft with { Step = step });
        }
    }

    /// <inheritdoc/>
    public override string? GoesOnAt(string at) => StepOf(at) == work.Plan.Draft.Step ? at : null;

    private static RoutineStep StepOf(string question) => question.Length == 0 ? RoutineStep.Income : (RoutineStep)(question[0] - '0');

    private IEnumerable<string> Heading(StepQuestions step) =>
    [
        .. step.Step == RoutineStep.Income
            ? [$"Payday of {DateText.Long(payday)}, which covers {DateText.Short(work.Plan.Period.First)} to {DateText.Short(work.Plan.Period.Last)}.{(work.Plan.Payday.IsExtra ? " It is an extra payday." : "")}"]
            : Array.Empty<string>(),
        $"Step {(int)step.Step} of 7, {StepBar.Name(step.Step)}.",
        .. step.Opening,
    ];

    // What a decision dropped of later ones is said with it.
    private Taken Told(Taken taken, RoutineStep step)
    {
        string said = $"{taken.Said} {told}".Trim();
        told = "";
        return taken is Taken.To to ? to with { Id = $"{(int)step} {to.Id}", Said = said } : taken with { Said = said };
    }
}
