using System.Runtime.InteropServices;
using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>The movements of a ledger that stand, by the ends that they go from and to.</summary>
/// <remarks>A value: what is in it never changes, and what is added gives another.</remarks>
internal sealed class EndIndex
{
    private readonly Dictionary<LedgerEnd, EndLines> byEnd;
    private readonly Currency currency;

    private EndIndex(Dictionary<LedgerEnd, EndLines> byEnd, Currency currency) => (this.byEnd, this.currency) = (byEnd, currency);

    /// <summary>That of a ledger.</summary>
    /// <param name="columns">What its movements begin with, where they were stored; or null.</param>
    /// <param name="all">All of its movements.</param>
    /// <param name="reversals">Which of them stand.</param>
    /// <param name="currency">Their currency.</param>
    public static EndIndex Of(MovementColumns? columns, GrowingList<Movement> all, Reversals reversals, Currency currency) => columns is null
        ? new(Gathered(all.Where(reversals.Stands), currency), currency)
        : new EndIndex(EndLines.Of(columns, all, reversals.Numbers), currency).With(all.From(columns.Count).Where(reversals.Stands));

    /// <summary>The movements of an end; null where it has none.</summary>
    public EndLines? Of(LedgerEnd end) => byEnd.GetValueOrDefault(end);

    /// <summary>The same with further movements.</summary>
    public EndIndex With(IEnumerable<Movement> added)
    {
        var more = new Dictionary<LedgerEnd, List<Movement>>();
        foreach (Movement movement in added)
        {
            At(movement.From).Add(movement);
            At(movement.To).Add(movement);
        }

        var indexed = new Dictionary<LedgerEnd, EndLines>(byEnd);
        foreach ((LedgerEnd end, List<Movement> movements) in more)
        {
            ref EndLines? known = ref CollectionsMarshal.GetValueRefOrAddDefault(indexed, end, out _);
            known = (known ?? EndLines.None(end, currency)).Add(CollectionsMarshal.AsSpan(movements));
        }

        return new EndIndex(indexed, currency);

        List<Movement> At(LedgerEnd end) => CollectionsMarshal.GetValueRefOrAddDefault(more, end, out _) ??= [];
    }

    /// <summary>The same with further movements, some of which undo others: what was undone goes from the lists of its two ends, and what undid it never comes in.</summary>
    /// <param name="all">All movements, the further ones too.</param>
    /// <param name="added">The further ones.</param>
    /// <param name="reversals">Which of all stand.</param>
    public EndIndex Less(GrowingList<Movement> all, List<Movement> added, Reversals reversals)
    {
        HashSet<LedgerEnd> ends =
        [
            .. added.Select(movement => movement.Reverses).OfType<long>().Select(number => all[(int)(number - 1)]).SelectMany(movement => new[] { movement.From, movement.To }),
        ];
        var less = new Dictionary<LedgerEnd, EndLines>(byEnd);
        foreach (LedgerEnd end in ends)
        {
            less[end] = EndLines.None(end, currency).Add([.. Of(end)?.Movements.Where(reversals.Stands) ?? []]);
        }

        return new EndIndex(less, currency).With(added.Where(reversals.Stands));
    }

    private static Dictionary<LedgerEnd, EndLines> Gathered(IEnumerable<Movement> all, Currency currency)
    {
        var byObject = new Dictionary<SameEnd, EndGathering>();
        var gathered = new Dictionary<LedgerEnd, EndGathering>();
        foreach (Movement movement in all)
        {
            At(movement.From).Add(movement);
            At(movement.To).Add(movement);
        }

        return gathered.ToDictionary(pair => pair.Key, pair => pair.Value.Gathered());

        EndGathering At(LedgerEnd end)
        {
            ref EndGathering? known = ref CollectionsMarshal.GetValueRefOrAddDefault(byObject, new SameEnd(end), out _);
            return known ??= CollectionsMarshal.GetValueRefOrAddDefault(gathered, end, out _) ??= new EndGathering(end, currency);
        }
    }
}
