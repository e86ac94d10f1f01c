using Payday.Core.Amounts;
using Payday.Core.Routines;
using Payday.Screens.Shell;

namespace Payday.Screens.Routines;

/// <summary>A routine worked on: each decision is stored as it is made, and the whole recomputed.</summary>
/// <param name="session">The book.</param>
/// <param name="plan">The routine as it stood.</param>
/// <param name="tell">Tells the person what a decision dropped; empty for nothing.</param>
internal sealed class RoutineWork(BookSession session, RoutinePlan plan, Action<string> tell)
{
    /// <summary>The book.</summary>
    public BookSession Session { get; } = session;

    /// <summary>The routine as it stands.</summary>
    public RoutinePlan Plan { get; private set; } = plan;

    /// <summary>Takes a decision.</summary>
    /// <returns>Why it can't be taken, or null.</returns>
    public string? Decide(Func<RoutineDraft, RoutineDraft> decide)
    {
        RoutineDraft draft = decide(Plan.Draft);
        Read<Recomputed> next = Recomputed.After(Plan, draft);
        if (!next.Ok)
        {
            return next.Fault;
        }

        Session.Keep(next.Value.Plan.Draft);
        Plan = next.Value.Plan;
        tell(string.Join(' ', next.Value.Dropped));
        return null;
    }
}
