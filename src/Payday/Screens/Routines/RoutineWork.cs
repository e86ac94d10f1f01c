using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Screens.Shell;
using Payday.Texts;

namespace Payday.Screens.Routines;

/// <summary>A routine worked on: each decision is stored as it is made, and the whole recomputed.</summary>
/// <param name="session">The book.</param>
/// <param name="plan">The routine as it stood.</param>
/// <param name="tell">Tells the person what a decision dropped; empty for nothing.</param>
/// <param name="news">Tells the person what was done.</param>
internal sealed class RoutineWork(BookSession session, RoutinePlan plan, Action<string> tell, Action<string> news)
{
    /// <summary>The book.</summary>
    public BookSession Session { get; } = session;

    /// <summary>The routine as it stands.</summary>
    public RoutinePlan Plan { get; private set; } = plan;

    /// <summary>Tells the person what was done, where it isn't in view.</summary>
    public void Tell(string sentence) => news(sentence);

    /// <summary>Takes a decision.</summary>
    /// <returns>Why it can't be taken, or null.</returns>
    public string? Decide(Func<RoutineDraft, RoutineDraft> decide)
    {
        RoutineDraft draft = decide(Plan.Draft);
        Result<Recomputed> next = Recomputed.After(Plan, draft);
        if (!next.Ok)
        {
            return FaultTexts.Of(next.Fault, Session.Style);
        }

        Session.Take(Session.Book with { Draft = next.Value.Plan.Draft });
        Plan = next.Value.Plan;
        tell(string.Join(' ', Said(next.Value.Dropped)));
        return null;
    }

    private IEnumerable<string> Said(IEnumerable<Fault> dropped) => dropped.Select(one => FaultTexts.Of(one, Session.Style));

    /// <summary>Takes an answer that changes the household, such as what becomes of a pot, and goes on with the same decisions.</summary>
    /// <param name="answer">The household with it, or why it can't be.</param>
    /// <param name="done">What to tell once it is stored; empty for nothing.</param>
    /// <returns>Why it can't be taken, or null.</returns>
    public string? Answer(Func<Book, Result<Household>> answer, string done)
    {
        Result<Household> household = answer(Session.Book);
        if (!household.Ok)
        {
            return FaultTexts.Of(household.Fault, Session.Style);
        }

        RoutineDraft draft = Plan.Draft;
        if (Session.Change(household.Value) is { } refusal)
        {
            return refusal;
        }

        Result<Recomputed> next = Recomputed.After(Plan with { Book = Session.Book }, draft);
        if (!next.Ok)
        {
            return FaultTexts.Of(next.Fault, Session.Style);
        }

        if (next.Value.Plan.Draft != draft)
        {
            Session.Take(Session.Book with { Draft = next.Value.Plan.Draft });
        }

        Plan = next.Value.Plan;
        string[] dropped = [.. Said(next.Value.Dropped)];
        (dropped is [] ? news : tell)(string.Join(' ', dropped.Prepend(done).Where(sentence => sentence.Length > 0)));
        return null;
    }
}
