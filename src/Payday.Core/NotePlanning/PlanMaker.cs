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
        SortedDictionary<long, int> totals = [];
        for (int i = 0; i < amounts.Length; i++)
        {
            long paid = 0;
            foreach ((long value, int count) in solved.Notes[i])
            {
                paid += value * count;
                totals[value] = totals.GetValueOrDefault(value) + count;
            }

            Money keptBack = Money.FromMinorUnits(amounts[i] - paid, currency);
            parts.Add(new PartNotes(request.Parts[i], Money.FromMinorUnits(amounts[i], currency), solved.Notes[i], keptBack));
        }

        ImmutableSortedDictionary<long, int> reused = Counts(
            totals.Select(note => (note.Key, Math.Min(note.Value, request.OnHand.GetValueOrDefault(note.Key)))));
        NoteWishCheck wishes = new(request);
        return new NotePlan(
            currency,
            parts.ToImmutable(),
            Counts(totals.Select(note => (note.Key, note.Value - reused.GetValueOrDefault(note.Key)))),
            Counts(request.OnHand.Select(note => (note.Key, note.Value - reused.GetValueOrDefault(note.Key)))),
            reused,
            [.. parts.Select((part, i) => wishes.FaultOf(part, limited[i])).OfType<NoteFault>()],
            limitShort,
            solved.Proven);
    }

    private static ImmutableSortedDictionary<long, int> Counts(IEnumerable<(long Value, int Count)> notes) =>
        notes.Where(note => note.Count > 0).ToImmutableSortedDictionary(note => note.Value, note => note.Count);
}
