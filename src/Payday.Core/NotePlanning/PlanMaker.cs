using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>Puts a plan together from the notes of each part.</summary>
internal static class PlanMaker
{
    /// <param name="request">The request.</param>
    /// <param name="solved">Notes for each part, and whether they are proven best.</param>
    /// <param name="amounts">What each part holds, in minor units.</param>
    /// <param name="limited">Whether a part gets less because of the machine's limit.</param>
    /// <param name="limitShort">How much the limit is short.</param>
    public static NotePlan Make(
        NoteRequest request,
        SolvedNotes solved,
        long[] amounts,
        bool[] limited,
        Money limitShort)
    {
        Currency currency = request.Currency;
        ImmutableArray<PartNotes>.Builder parts = ImmutableArray.CreateBuilder<PartNotes>();
        for (int i = 0; i < amounts.Length; i++)
        {
            long paid = 0;
            foreach ((long value, int count) in solved.Notes[i])
            {
                paid += value * count;
            }

            Money keptBack = Money.FromMinorUnits(amounts[i] - paid, currency);
            parts.Add(new PartNotes(request.Parts[i], Money.FromMinorUnits(amounts[i], currency), solved.Notes[i], keptBack));
        }

        Notes needed = Notes.Sum(solved.Notes);
        Notes reused = needed.Common(request.Loose);
        NoteWishCheck wishes = new(request);
        return new NotePlan(
            currency,
            parts.ToImmutable(),
            needed.Less(reused),
            request.Loose.Less(reused),
            reused,
            [.. parts.Select((part, i) => wishes.FaultOf(part, limited[i])).OfType<NoteFault>()],
            limitShort,
            solved.Proven);
    }
}
