using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>Plans with the notes that are there and no others: nothing can be fetched.</summary>
/// <remarks>As <see cref="NotePlanner"/> does it: small money first, then least left unpaid, then fewest notes.</remarks>
internal static class HandPlan
{
    /// <summary>The notes of each part, in their order; what they can't pay of a part stays unpaid.</summary>
    /// <param name="notes">The notes in use, at least one.</param>
    /// <param name="hand">The notes that are there.</param>
    /// <param name="parts">What is to be paid.</param>
    public static ImmutableArray<Notes> Of(ImmutableArray<Money> notes, Notes hand, ImmutableArray<NotePart> parts)
    {
        var request = new NoteRequest(notes, hand, new CashSource.Teller(), parts);
        RequestCheck.ThrowIfWrong(request);
        return new ProblemMaker(request, []).Solve([.. parts.Select(part => part.Amount.MinorUnits)], new Effort(Effort.OfPlan)).Notes;
    }
}
