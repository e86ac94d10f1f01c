using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>Where the notes of one pot come from.</summary>
/// <param name="PotId">The pot.</param>
/// <param name="OwedBack">Owed-back notes used again, and the pots that owed them.</param>
/// <param name="Loose">Loose notes at home.</param>
/// <param name="Fetched">From the bank.</param>
internal sealed record NoteOrigins(
    PotId PotId,
    ImmutableArray<(PotId From, Notes Notes)> OwedBack,
    Notes Loose,
    Notes Fetched)
{
    /// <summary>
    /// The origins of every pot's notes: first what would otherwise be carried to the bank, then what lies loose at
    /// home, then what is fetched.
    /// </summary>
    public static ImmutableArray<NoteOrigins> Of(WithdrawalStep step)
    {
        Notes loose = step.Plan.Reused.Less(OwedBackOffer.Sum(step.OwedBack));
        ReturnedPot[] owed = [.. step.OwedBack];
        var origins = ImmutableArray.CreateBuilder<NoteOrigins>();
        foreach (CashPotRow row in step.Pots)
        {
            Notes notes = Notes.Sum(row.Weeks.Select(week => week.Notes));
            var given = ImmutableArray.CreateBuilder<(PotId From, Notes Notes)>();
            for (int i = 0; i < owed.Length; i++)
            {
                Notes used = Common(ref notes, owed[i].Notes!);
                owed[i] = owed[i] with { Notes = owed[i].Notes!.Less(used) };
                if (!used.IsEmpty)
                {
                    given.Add((owed[i].PotId, used));
                }
            }

            Notes fromHome = Common(ref notes, loose);
            loose = loose.Less(fromHome);
            origins.Add(new NoteOrigins(row.Pot.Id, given.ToImmutable(), fromHome, notes));
        }

        return origins.ToImmutable();
    }

    // Takes out of what is wanted as much as is on offer.
    private static Notes Common(ref Notes wanted, Notes offered)
    {
        Notes common = wanted.Common(offered);
        wanted = wanted.Less(common);
        return common;
    }
}
