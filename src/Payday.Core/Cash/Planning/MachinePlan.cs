using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Cash.Planning;

/// <summary>The plan for a machine.</summary>
internal static class MachinePlan
{
    public static NotePlan Make(NoteRequest request, CashSource.Machine machine)
    {
        long[] amounts = [.. request.Parts.Select(part => part.Amount.MinorUnits)];
        ProblemMaker maker = new(request, [.. machine.Notes.Select(note => note.MinorUnits)]);
        return PlanMaker.Make(request, maker.Solve(amounts), amounts, amounts, Money.Zero(request.Currency));
    }
}
