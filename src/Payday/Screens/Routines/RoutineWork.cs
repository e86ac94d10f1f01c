using Payday.Core.Amounts;
using Payday.Core.Routines;
using Payday.Screens.Shell;

namespace Payday.Screens.Routines;

/// <summary>A routine worked on: each decision is stored as it is made, and the whole recomputed.</summary>
internal sealed class RoutineWork(BookSession session, RoutinePlan plan)
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
        Read<RoutinePlan> next = Routine.Plan(Session.Book, draft);
        if (!next.Ok)
        {
            return next.Fault;
        }

        Session.Keep(draft);
        Plan = next.Value;
        return null;
    }
}
