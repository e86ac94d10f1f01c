using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;

namespace Payday.Core.Drafts;

/// <summary>Makes the changes of an amount of drafts.</summary>
internal static class LaterCheck
{
    /// <summary>Checks them: rising dates from the start on, each once, with amounts in their limits.</summary>
    /// <param name="later">The drafts, or null for none.</param>
    /// <param name="member">The member that holds them.</param>
    /// <param name="of">The item that has it.</param>
    /// <param name="check">The check.</param>
    /// <param name="aboveZero">Whether an amount of zero has no meaning.</param>
    public static LaterAmounts Of(ImmutableArray<LaterDraft>? later, DraftMember member, DraftPlace of, DraftCheck check, bool aboveZero = false)
    {
        ImmutableArray<LaterDraft> changes = later ?? [];
        check.NotTooMany(changes.Length, HouseholdLimits.MostChanges, of.Then(member));
        var made = ImmutableArray.CreateBuilder<LaterAmount>(changes.Length);
        LocalDate? before = null;
        for (int i = 0; i < changes.Length; i++)
        {
            DraftPlace place = of.Then(member, i);
            DraftPlace fromAt = place.Then(LaterDraft.Members.From);
            DraftPlace amountAt = place.Then(LaterDraft.Members.Amount);
            LocalDate from = check.LaterDate(changes[i].From, fromAt);
            Money amount = aboveZero ? check.AmountAboveZero(changes[i].Amount, amountAt) : check.Amount(changes[i].Amount, amountAt);
            if (check.IsSound(fromAt))
            {
                if (from <= before)
                {
                    check.Refuse(new DraftFault.ChangeNotAfter(fromAt, from, before.Value));
                }

                before = from;
            }

            made.Add(new LaterAmount(from, amount));
        }

        // With a fault it is a stand-in: the household is refused anyway.
        return check.IsSound(of.Then(member)) ? LaterAmounts.Of(made.ToImmutable()) : LaterAmounts.None;
    }
}
