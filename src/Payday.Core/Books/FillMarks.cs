using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>What became of fills, by pot and day: many ask for one of them, of a life of fills, while more are marked.</summary>
/// <remarks>
/// It says nothing that the list of the fills doesn't say itself, so any two are equal. What the list began with is looked
/// up in one table that all that come of it share; what was marked since lies beside it.
/// </remarks>
internal sealed class FillMarks : IEquatable<FillMarks>
{
    private static readonly ImmutableDictionary<PotId, ImmutableDictionary<(LocalDate Payday, LocalDate? Week), WalletFill>> None =
        ImmutableDictionary<PotId, ImmutableDictionary<(LocalDate Payday, LocalDate? Week), WalletFill>>.Empty;

    private readonly Lazy<Dictionary<PotId, Dictionary<(LocalDate Payday, LocalDate? Week), WalletFill>>> first;
    private readonly ImmutableDictionary<PotId, ImmutableDictionary<(LocalDate Payday, LocalDate? Week), WalletFill>> since;

    /// <param name="fills">All of them, at most one a part.</param>
    public FillMarks(ImmutableArray<WalletFill> fills)
        : this(new(() => ByPot(fills)), None)
    {
    }

    private FillMarks(
        Lazy<Dictionary<PotId, Dictionary<(LocalDate Payday, LocalDate? Week), WalletFill>>> first,
        ImmutableDictionary<PotId, ImmutableDictionary<(LocalDate Payday, LocalDate? Week), WalletFill>> since) => (this.first, this.since) = (first, since);

    /// <summary>Those of one pot.</summary>
    public OfPot Of(PotId potId) => new(first.Value.GetValueOrDefault(potId), since.GetValueOrDefault(potId));

    /// <summary>The marks with others, each in the place of the one of its part.</summary>
    public FillMarks With(IEnumerable<WalletFill> fills) => new(first, since.SetItems(fills.GroupBy(fill => fill.Key.PotId).Select(pot => KeyValuePair.Create(
        pot.Key,
        since.GetValueOrDefault(pot.Key, ImmutableDictionary<(LocalDate Payday, LocalDate? Week), WalletFill>.Empty)
            .SetItems(pot.Select(fill => KeyValuePair.Create((fill.Key.Payday, fill.Key.Week), fill)))))));

    /// <inheritdoc/>
    public bool Equals(FillMarks? other) => other is not null;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FillMarks);

    /// <inheritdoc/>
    public override int GetHashCode() => 0;

    private static Dictionary<PotId, Dictionary<(LocalDate Payday, LocalDate? Week), WalletFill>> ByPot(ImmutableArray<WalletFill> fills)
    {
        var all = new Dictionary<PotId, Dictionary<(LocalDate Payday, LocalDate? Week), WalletFill>>();
        foreach (WalletFill fill in fills)
        {
            if (!all.TryGetValue(fill.Key.PotId, out Dictionary<(LocalDate Payday, LocalDate? Week), WalletFill>? ofPot))
            {
                all[fill.Key.PotId] = ofPot = [];
            }

            ofPot.Add((fill.Key.Payday, fill.Key.Week), fill);
        }

        return all;
    }

    /// <summary>What became of the fills of one pot.</summary>
    internal readonly struct OfPot(
        Dictionary<(LocalDate Payday, LocalDate? Week), WalletFill>? first, ImmutableDictionary<(LocalDate Payday, LocalDate? Week), WalletFill>? since)
    {
        /// <summary>What became of one, or null while it waits.</summary>
        public WalletFill? this[LocalDate payday, LocalDate? week] =>
            since?.GetValueOrDefault((payday, week)) ?? first?.GetValueOrDefault((payday, week));
    }
}
