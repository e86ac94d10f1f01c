using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Bills;

/// <summary>Which bill holds how much, once the plan for all bills together has said what is set aside today.</summary>
/// <remarks>
/// The plan is for all bills together, because that is what makes it the most even one. Money stays with the bill that
/// holds it while that can be: only where a bill due in this period lacks more than today brings does it take from
/// another, first from the one whose next due is furthest away.
/// </remarks>
public static class SetAsideShares
{
    /// <summary>Shares today's set-aside over the bills.</summary>
    /// <param name="bills">What each bill holds and needs, in household order.</param>
    /// <param name="setAside">What is set aside today over all bills, zero or more, and no more than all dues lack.</param>
    /// <param name="later">The dues after this period, in order of date.</param>
    /// <returns>
    /// What each bill holds afterwards, in the same order. It adds up to what was held and what is set aside, and
    /// covers each bill's dues of this period as far as that reaches.
    /// </returns>
    /// <exception cref="ArgumentException">More is set aside than all dues need.</exception>
    public static ImmutableArray<Money> After(IReadOnlyList<BillNeed> bills, Money setAside, IReadOnlyList<Due> later)
    {
        ArgumentNullException.ThrowIfNull(bills);
        ArgumentNullException.ThrowIfNull(later);
        Money[] holds = [.. bills.Select(bill => bill.Held)];
        Money left = setAside;
        for (int i = 0; i < holds.Length; i++)
        {
            Money lacking = (bills[i].DueNow - holds[i]).ClampToZero();
            Money given = Money.Min(lacking, left);
            holds[i] += given;
            left -= given;
        }

        TakeFromOthers(bills, holds, later);
        return Ahead(bills, holds, left, later);
    }

    private static void TakeFromOthers(IReadOnlyList<BillNeed> bills, Money[] holds, IReadOnlyList<Due> later)
    {
        // A bill without a later due has no use for what it holds beyond this period, so it gives first.
        int[] lacking = [.. Enumerable.Range(0, holds.Length).Where(i => bills[i].DueNow > holds[i])];
        if (lacking.Length == 0)
        {
            return;
        }

        var next = new Dictionary<BillId, LocalDate>();
        foreach (Due due in later)
        {
            next.TryAdd(due.BillId, due.Date);
        }

        int[] givers = [.. Enumerable.Range(0, holds.Length)
            .Where(i => holds[i] > bills[i].DueNow)
            .OrderByDescending(i => next.GetValueOrDefault(bills[i].BillId, LocalDate.MaxIsoValue))];
        foreach (int i in lacking)
        {
            foreach (int giver in givers)
            {
                Money taken = Money.Min((bills[i].DueNow - holds[i]).ClampToZero(), (holds[giver] - bills[giver].DueNow).ClampToZero());
                holds[giver] -= taken;
                holds[i] += taken;
            }
        }
    }

    private static ImmutableArray<Money> Ahead(IReadOnlyList<BillNeed> bills, Money[] holds, Money left, IReadOnlyList<Due> later)
    {
        Dictionary<BillId, int> places = Enumerable.Range(0, holds.Length).ToDictionary(i => bills[i].BillId);
        Money[] spare = [.. holds.Select((held, i) => (held - bills[i].DueNow).ClampToZero())];
        foreach (Due due in later)
        {
            if (left.IsZero)
            {
                break;
            }

            if (!places.TryGetValue(due.BillId, out int i))
            {
                continue;
            }

            Money covered = Money.Min(spare[i], due.Amount);
            spare[i] -= covered;
            Money given = Money.Min(due.Amount - covered, left);
            holds[i] += given;
            left -= given;
        }

        return left.IsZero
            ? [.. holds]
            : throw new ArgumentException("More is set aside than all dues need.", nameof(left));
    }
}

/// <summary>What a bill holds, and what it needs in this period.</summary>
/// <param name="BillId">The bill.</param>
/// <param name="Held">Zero or more.</param>
/// <param name="DueNow">What falls due in this period, zero or more.</param>
public readonly record struct BillNeed(BillId BillId, Money Held, Money DueNow);
