using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ids;

namespace Payday.Core.Households;

/// <summary>What was there when the household began.</summary>
/// <param name="Account">Everything in the account, of which the purposes below are parts; the rest is the buffer. Below zero where it is overdrawn; then nothing is a part of it.</param>
/// <param name="SetAside">By bill id: what the account already holds for it.</param>
/// <param name="Pots">By pot id: what the pot already holds, in its own place.</param>
/// <param name="LooseNotes">By note value in minor units: loose notes at home, in no pot.</param>
public sealed record OpeningBalances(
    Money Account,
    ImmutableSortedDictionary<BillId, Money> SetAside,
    ImmutableSortedDictionary<PotId, Money> Pots,
    Notes LooseNotes);
