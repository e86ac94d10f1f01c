using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Cash.Planning;

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
        long smallest = SmallestFetched(request);
        return new NotePlan(
            currency,
            parts.ToImmutable(),
            Counts(totals.Select(note => (note.Key, note.Value - reused.GetValueOrDefault(note.Key)))),
            Counts(request.OnHand.Select(note => (note.Key, note.Value - reused.GetValueOrDefault(note.Key)))),
            reused,
            [.. parts.Select((part, i) => FaultOf(part, limited[i], smallest)).OfType<NoteFault>()],
            limitShort,
            solved.Proven);
    }

    private static ImmutableSortedDictionary<long, int> Counts(IEnumerable<(long Value, int Count)> notes) =>
        notes.Where(note => note.Count > 0).ToImmutableSortedDictionary(note => note.Value, note => note.Count);

    private static long SmallestFetched(NoteRequest request) =>
        (request.Source is CashSource.Machine machine ? machine.Notes : request.Notes).Min(note => note.MinorUnits);

    private static NoteFault? FaultOf(PartNotes part, bool limited, long smallest)
    {
        Currency currency = part.Amount.Currency;
        NoteWishes wishes = part.Part.Wishes;
        if (part.Amount.IsZero)
        {
            return null;
        }

        if (limited)
        {
            return Named(NoteFaultKind.Limit, part.Amount, part.Paid);
        }

        if (wishes.TopNote is { } top && top.MinorUnits < smallest && part.KeptBack.IsPositive)
        {
            return Named(NoteFaultKind.TopNote, top, Money.FromMinorUnits(smallest, currency));
        }

        if (wishes.Small is not { } small)
        {
            return null;
        }

        long held = part.Notes.Where(note => note.Key <= small.Note.MinorUnits).Sum(note => note.Key * note.Value);
        return held < small.AtLeast.MinorUnits
            ? Named(NoteFaultKind.SmallMoney, small.AtLeast, Money.FromMinorUnits(held, currency))
            : null;

        NoteFault Named(NoteFaultKind kind, Money wished, Money possible) =>
            new(kind, part.Part.Pot, part.Part.Name, part.Part.Week, wished, possible);
    }
}
