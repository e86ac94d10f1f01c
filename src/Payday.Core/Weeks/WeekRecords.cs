using System.Collections.Immutable;

namespace Payday.Core.Weeks;

/// <summary>What happened between paydays, each list in the order in which it was entered.</summary>
/// <remarks>
/// The ledger holds the money; these say what its movements were for. A count that is confirmed never changes: what
/// is known later about its difference is a settlement of its own.
/// </remarks>
/// <param name="Fills">Fills of the wallet marked done or skipped, at most one a part.</param>
/// <param name="Purchases">Card purchases, undone ones too; the one at index i has number i + 1.</param>
/// <param name="Counts">Counts of single pots; the one at index i has number i + 1.</param>
/// <param name="Settled">Differences of counts that were cleared up since, at most one a count.</param>
/// <param name="Returns">Owed-back cash that reached the account, or a pot in its stead; numbered likewise.</param>
/// <param name="Draft">A count begun and not confirmed, or null.</param>
public sealed record WeekRecords(
    ImmutableArray<WalletFill> Fills,
    ImmutableArray<CardPurchase> Purchases,
    ImmutableArray<WeekCount> Counts,
    ImmutableArray<SettledDifference> Settled,
    ImmutableArray<CashReturn> Returns,
    CountDraft? Draft)
{
    /// <summary>Nothing happened yet.</summary>
    public static WeekRecords None { get; } = new([], [], [], [], [], null);

    /// <summary>Whether nothing was confirmed; a draft alone is nothing.</summary>
    public bool IsEmpty => Fills.IsEmpty && Purchases.IsEmpty && Counts.IsEmpty && Returns.IsEmpty;

    /// <summary>The last count of a pot, or null.</summary>
    public WeekCount? LastCountOf(string potId) => Counts.LastOrDefault(count => count.PotId == potId);
}
