using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Households;

namespace Payday.Core.Receiving;

/// <summary>Which wishes of pots were kept by a plan and aren't by another.</summary>
internal static class WishesGone
{
    /// <summary>Part by part, in their order.</summary>
    public static ImmutableArray<WishGone> Of(Household household, ImmutableArray<ClosedPart> before, ImmutableArray<ClosedPart> after) =>
        [.. before.Zip(after).SelectMany(part => Of(household, part.First, part.Second))];

    private static IEnumerable<WishGone> Of(Household household, ClosedPart before, ClosedPart after)
    {
        if (household.Pots.FirstOrDefault(pot => pot.Id == before.PotId) is not { } pot)
        {
            yield break;
        }

        WishGone Gone(WishKind kind, Money was, Money now) => new(kind, pot.Id, pot.Name, before.Week, was, now);
        Money paid = after.Notes.Worth(household.Currency);
        if (pot.Notes.TopNote is { } top && Largest(after.Notes) > top.MinorUnits && Largest(before.Notes) <= top.MinorUnits)
        {
            yield return Gone(WishKind.TopNote, top, Money.FromMinorUnits(Largest(after.Notes), household.Currency));
        }

        if (pot.Notes.Small is { } small && SmallOf(before, small) >= small.AtLeast && SmallOf(after, small) < small.AtLeast && paid >= small.AtLeast)
        {
            yield return Gone(WishKind.SmallMoney, small.AtLeast, SmallOf(after, small));
        }

        if (before.Week is not null && paid != before.Notes.Worth(household.Currency))
        {
            yield return Gone(WishKind.Week, before.Notes.Worth(household.Currency), paid);
        }
    }

    private static long Largest(Notes notes) => notes.Where(note => note.Value > 0).Select(note => note.Key).DefaultIfEmpty().Max();

    private static Money SmallOf(ClosedPart part, SmallMoney small) => part.Notes.Only(value => value <= small.Note.MinorUnits).Worth(small.AtLeast.Currency);
}
