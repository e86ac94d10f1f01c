using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>A part of what a bill holds and gets today.</summary>
/// <param name="Held">Held before.</param>
/// <param name="SetAside">Added today.</param>
public readonly record struct SetAsidePart(Money Held, Money SetAside);

/// <summary>
/// Which due the money of a bill is for: what is held goes to its dues of this period, the earliest first, then what is
/// set aside today; what is left of both is for later ones. All parts together are what the bill holds and gets.
/// </summary>
public sealed class SetAsideParts
{
    private readonly ImmutableDictionary<DueKey, SetAsidePart> dues;
    private readonly ImmutableDictionary<BillId, SetAsidePart> later;

    private SetAsideParts(ImmutableDictionary<DueKey, SetAsidePart> dues, ImmutableDictionary<BillId, SetAsidePart> later) =>
        (this.dues, this.later) = (dues, later);

    /// <summary>The parts of a step.</summary>
    public static SetAsideParts Of(BillsStep bills)
    {
        ArgumentNullException.ThrowIfNull(bills);
        var later = bills.SetAsides.ToDictionary(line => line.BillId, line => new SetAsidePart(line.HeldBefore, line.SetAside));
        var dues = ImmutableDictionary.CreateBuilder<DueKey, SetAsidePart>();
        foreach (DueRow row in bills.Dues.OrderBy(row => row.Date))
        {
            SetAsidePart rest = later[row.BillId];
            Money held = Money.Min(rest.Held.ClampToZero(), row.Amount);
            Money added = Money.Min(rest.SetAside.ClampToZero(), row.Amount - held);
            dues[row.Key] = new SetAsidePart(held, added);
            later[row.BillId] = new SetAsidePart(rest.Held - held, rest.SetAside - added);
        }

        return new SetAsideParts(dues.ToImmutable(), later.ToImmutableDictionary());
    }

    /// <summary>What is for a due of this period, or an earlier one.</summary>
    public SetAsidePart For(DueKey due) => dues[due];

    /// <summary>What is for later dues of a bill.</summary>
    public SetAsidePart Later(BillId billId) => later[billId];
}
