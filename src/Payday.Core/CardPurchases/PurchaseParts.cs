using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Ids;

namespace Payday.Core.CardPurchases;

/// <summary>The parts of a purchase over several pots, as a person says them: one of them may have the rest.</summary>
public static class PurchaseParts
{
    /// <summary>The parts with their amounts.</summary>
    /// <param name="parts">What was said: pots, null for the buffer, with their amounts; null for what is left of the whole. One at least.</param>
    /// <param name="total">What was paid in all, below zero what came back; null where only the parts say it.</param>
    /// <returns>The parts; or why they can't be: a rest of nothing, two of them, or a sum that isn't the whole.</returns>
    public static Result<ImmutableArray<PurchasePart>> Of(IReadOnlyList<(PotId? PotId, Money? Amount)> parts, Money? total)
    {
        ArgumentNullException.ThrowIfNull(parts);
        int rests = parts.Count(part => part.Amount is null);
        if (rests > 1 || (rests == 1 && total is null))
        {
            return Result.Refused<ImmutableArray<PurchasePart>>(rests > 1 ? new PurchaseFault.RestTwice() : new PurchaseFault.RestOfUnknown());
        }

        if (total is not { } whole)
        {
            return Result.Of<ImmutableArray<PurchasePart>>([.. parts.Select(part => new PurchasePart(part.PotId, part.Amount!.Value))]);
        }

        Money named = Money.Sum(parts.Select(part => part.Amount).OfType<Money>(), whole.Currency);
        Money rest = whole - named;
        if (rests == 0)
        {
            return rest.IsZero
                ? Result.Of<ImmutableArray<PurchasePart>>([.. parts.Select(part => new PurchasePart(part.PotId, part.Amount!.Value))])
                : Result.Refused<ImmutableArray<PurchasePart>>(new PurchaseFault.PartsDiffer(named, whole));
        }

        return rest.IsZero || rest.IsNegative != whole.IsNegative
            ? Result.Refused<ImmutableArray<PurchasePart>>(new PurchaseFault.NothingLeft(named, whole))
            : Result.Of<ImmutableArray<PurchasePart>>([.. parts.Select(part => new PurchasePart(part.PotId, part.Amount ?? rest))]);
    }
}
