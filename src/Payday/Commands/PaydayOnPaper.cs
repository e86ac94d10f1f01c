using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Routines;

namespace Payday.Commands;

/// <summary>The payday whose papers are wanted.</summary>
/// <param name="Payday">Its record; a proposal's is not yet stored.</param>
/// <param name="Closed">Whether it is closed.</param>
internal sealed record PaydayOnPaper(ClosedPayday Payday, bool Closed)
{
    /// <summary>Finds it: on a date, or else the last closed one, or else the next.</summary>
    public static Result<PaydayOnPaper> Find(Book book, LocalDate? on)
    {
        if (on is null && book.LastClosed is { } last)
        {
            return Result.Of(new PaydayOnPaper(last, true));
        }

        if (book.Closed.FirstOrDefault(closed => closed.Payday == on) is { } found)
        {
            return Result.Of(new PaydayOnPaper(found, true));
        }

        Result<RoutineDraft> draft = Routine.Begun(book, on);
        Result<RoutinePlan> plan = draft.Ok ? Routine.Plan(book, draft.Value) : Result.Refused<RoutinePlan>(draft.Fault);
        return plan.Ok
            ? Result.Of(new PaydayOnPaper(ClosingRecord.AsPlanned(plan.Value), false))
            : Result.Refused<PaydayOnPaper>(plan.Fault);
    }
}
