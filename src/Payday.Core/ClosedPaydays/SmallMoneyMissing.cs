using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Pots;

namespace Payday.Core.ClosedPaydays;

/// <summary>The pots whose notes hold less small money than they want.</summary>
public static class SmallMoneyMissing
{
    /// <summary>In the order of the household's pots.</summary>
    public static ImmutableArray<Pot> Of(Household household, ClosedPayday payday)
    {
        ArgumentNullException.ThrowIfNull(household);
        ArgumentNullException.ThrowIfNull(payday);
        return [.. household.Pots.Where(pot => pot.Notes.Small is { } small && payday.Parts.Any(part => part.PotId == pot.Id && !part.Notes.IsEmpty
            && part.Notes.Only(value => value <= small.Note.MinorUnits).Worth(household.Currency) < small.AtLeast))];
    }
}
