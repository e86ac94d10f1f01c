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
    ImmutableArray<(PotId From, ImmutableSortedDictionary<long, int> Notes)> OwedBack,
    ImmutableSortedDictionary<long, int> Loose,
    ImmutableSortedDictionary<long, int> Fetched)
{
    /// <summary>
    /// The origins of every pot's notes: first what would otherwise be carried to the bank, then what lies loose at
    /// home, then what is fetched.
    /// </summary>
    public static ImmutableArray<NoteOrigins> Of(WithdrawalStep step)
    {
        ImmutableSortedDictionary<long, int> loose = NoteBag.Less(step.Plan.Reused, OwedBackOffer.Sum(step.OwedBack));
        ReturnedPot[] owed = [.. step.OwedBack];
        var origins = ImmutableArray.CreateBuilder<NoteOrigins>();
        foreach (CashPotRow row in step.Pots)
        {
            ImmutableSortedDictionary<long, int> notes = row.Weeks.Aggregate(NoteBag.Empty, (all, week) => NoteBag.Plus(all, week.Notes));
            var given = ImmutableArray.CreateBuilder<(PotId From, ImmutableSortedDictionary<long, int> Notes)>();
            for (int i = 0; i < owed.Length; i++)
            {
                ImmutableSortedDictionary<long, int> used = Common(ref notes, owed[i].Notes!);
                owed[i] = owed[i] with { Notes = NoteBag.Less(owed[i].Notes!, used) };
                if (!used.IsEmpty)
                {
                    given.Add((owed[i].PotId, used));
                }
            }

            ImmutableSortedDictionary<long, int> fromHome = Common(ref notes, loose);
            loose = NoteBag.Less(loose, fromHome);
            origins.Add(new NoteOrigins(row.Pot.Id, given.ToImmutable(), fromHome, notes));
        }

        return origins.ToImmutable();
    }

    // Takes out of what is wanted as much as is on offer.
    private static ImmutableSortedDictionary<long, int> Common(
        ref ImmutableSortedDictionary<long, int> wanted, ImmutableSortedDictionary<long, int> offered)
    {
        ImmutableSortedDictionary<long, int> common = NoteBag.Less(wanted, NoteBag.Less(wanted, offered));
        wanted = NoteBag.Less(wanted, common);
        return common;
    }
}
