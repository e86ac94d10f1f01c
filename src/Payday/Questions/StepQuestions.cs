using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Routines;
using Payday.Screens.Routines;

namespace Payday.Questions;

/// <summary>The questions of one step of the routine; what an answer does is what typing or ticking on the step's screen does.</summary>
/// <param name="work">The routine worked on.</param>
internal abstract class StepQuestions(RoutineWork work)
{
    /// <summary>The step.</summary>
    public abstract RoutineStep Step { get; }

    /// <summary>The questions, as the routine stands.</summary>
    public abstract IEnumerable<Question> All { get; }

    /// <summary>What is said before the first of them.</summary>
    public virtual IEnumerable<string> Opening => [];

    /// <summary>The routine worked on.</summary>
    protected RoutineWork Work { get; } = work;

    /// <summary>The routine as it stands.</summary>
    protected RoutinePlan Plan => Work.Plan;

    /// <summary>An amount as this household writes it.</summary>
    protected string Shown(Money amount) => amount.ToString(Work.Session.Style);

    /// <summary>A question for the figure of a row.</summary>
    /// <param name="id">What it is found by.</param>
    /// <param name="text">The question.</param>
    /// <param name="row">The row.</param>
    /// <param name="now">What is said once it was changed.</param>
    /// <param name="isProposal">Whether the word <c>proposal</c> takes the proposal again; else the row's tick means something else.</param>
    protected Question Amount(string id, string text, StepRow row, Func<string> now, bool isProposal = true) => new(id, text, answer =>
    {
        if (answer.Length == 0)
        {
            return Taken.On;
        }

        if (isProposal && row.Tick is { } tick && IsWord(answer, "proposal"))
        {
            tick();
            return new Taken.Next(now());
        }

        return Taken.OrRefused(row.Edit!.Accept(answer), now);
    })
    {
        Help = [$"Type an amount to change it; a sum like {Work.Session.Style.Written("12.50+3")} is taken.", .. isProposal && row.Tick is not null ? ["Type proposal to take what is proposed again."] : Array.Empty<string>(), row.Rule],
    };

    /// <summary>A decision that is taken, or what is wrong with it.</summary>
    protected Taken Decide(Func<RoutineDraft, RoutineDraft> decide, Func<string> said) => Taken.OrRefused(Work.Decide(decide), said);

    /// <summary>Whether an answer is a word.</summary>
    protected static bool IsWord(string answer, string word) => string.Equals(answer, word, StringComparison.OrdinalIgnoreCase);
}
