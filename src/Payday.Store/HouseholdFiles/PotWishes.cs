using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Pots;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Whether the wishes of a pot go with the rest of it.</summary>
internal static class PotWishes
{
    /// <summary>Reports what a pot in the account can't have, and small money that no fill of the pot can hold.</summary>
    public static void Check(JsonFields pot, Held held, PotKind? kind, NoteWishes wishes)
    {
        if (held == Held.InTheAccount)
        {
            RefuseInAccount(pot.Optional("topNote"));
            RefuseInAccount(pot.Optional("small"));
            if (kind is PotKind.Spending)
            {
                pot.Optional("weeks")?.Refuse("A pot held in the account isn't divided over weeks; take this out, or write \"held\": \"cash\".");
            }
        }
        else if (wishes.Small is { } small && kind is not null && pot.Owner.IsSound && small.AtLeast > LargestFill(kind))
        {
            pot.Required("small").Refuse($"The pot never gets more than {LargestFill(kind).ToPlain()} at once, so it can't have {small.AtLeast.ToPlain()} in small notes; lower \"atLeast\".");
        }
    }

    private static void RefuseInAccount(JsonCursor? wish) =>
        wish?.Refuse("A pot held in the account takes no notes; take this out, or write \"held\": \"cash\".");

    private static Money LargestFill(PotKind kind) => kind switch
    {
        PotKind.Spending spending => spending.Amount,
        PotKind.Sinking sinking => sinking.Target,
        PotKind.Ladder { Order: LadderOrder.Even } ladder => ladder.Unit,
        PotKind.Ladder ladder => Money.FromMinorUnits((long)Int128.Min((Int128)ladder.Unit.MinorUnits * ladder.Steps, long.MaxValue), ladder.Unit.Currency),
        PotKind.Reserve reserve => reserve.PerPayday,
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
