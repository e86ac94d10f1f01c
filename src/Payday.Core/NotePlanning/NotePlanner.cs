using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>Chooses whole notes for each pot and week.</summary>
/// <remarks>
/// <para>
/// No part gets a note above its top note, and each gets its small money. Where that can't be, it gets as much
/// small money as it can, and the plan says so. Then, in this order:
/// </para>
/// <list type="number">
/// <item>least kept back: what no allowed notes can make stays in the account;</item>
/// <item>least value fetched, given the notes on hand;</item>
/// <item>fewest notes in all;</item>
/// <item>of plans equal in all that, the one the search meets first. It prefers larger notes, and earlier parts get
/// them, so the same request always gives the same plan.</item>
/// </list>
/// <para>
/// From a machine only its own notes can be fetched, though any note on hand is used again. A pot whose weeks can't
/// be paid so moves money between them to what can: as much as possible in all, never more than the pot has, with
/// the least money moved, and earlier weeks get the larger share. If the machine's limit is too low, parts are served
/// in order, each as far as the limit reaches.
/// </para>
/// <para>Source of the rules: the project's design, section 5, rule 7.</para>
/// </remarks>
public static class NotePlanner
{
    /// <summary>The plan for a request.</summary>
    /// <exception cref="ArgumentException">
    /// No notes in use or from the machine; a note, top note or small note not above zero; an amount, small money, limit
    /// or count below zero; or two currencies.
    /// </exception>
    public static NotePlan Plan(NoteRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        RequestCheck.ThrowIfWrong(request);
        if (request.Source is CashSource.Machine machine)
        {
            return MachinePlan.Make(request, machine);
        }

        long[] amounts = [.. request.Parts.Select(part => part.Amount.MinorUnits)];
        ProblemMaker maker = new(request, [.. request.Notes.Select(note => note.MinorUnits)]);
        return PlanMaker.Make(request, maker.Solve(amounts, new Effort(Effort.OfPlan)), amounts, new bool[amounts.Length], Money.Zero(request.Currency));
    }
}
