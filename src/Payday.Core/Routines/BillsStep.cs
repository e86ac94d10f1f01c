using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>Bills due, and what is held back for them. Worked out by <see cref="BillRules"/>.</summary>
/// <param name="Dues">The bills due in this period, and earlier ones not yet paid.</param>
/// <param name="SetAsides">A row for each bill that holds or gets money.</param>
/// <param name="Mode">How money is held back this time.</param>
/// <param name="Held">What the account held for bills before, zero or more.</param>
/// <param name="Planned">What the plan sets aside today.</param>
/// <param name="Total">What is set aside today: the plan's, or less where a shortfall takes from what is not due yet.</param>
/// <param name="Late">Dues of the next 13 months that the expected pay can't meet in time.</param>
public sealed record BillsStep(
    ImmutableArray<DueRow> Dues,
    ImmutableArray<SetAsideLine> SetAsides,
    SetAsideMode Mode,
    Money Held,
    Money Planned,
    Money Total,
    ImmutableArray<LateDue> Late)
{
    /// <summary>Why so much is set aside; null where it is just what this period needs, or less than planned.</summary>
    public SetAsideReason? Reason { get; init; }

    /// <summary>What the plan would set aside and there is no money for today.</summary>
    public Money Lacking => Planned - Total;

    /// <summary>What is due in this period, paid or not.</summary>
    public Money Due => Money.Sum(Dues.Select(row => row.Amount), Total.Currency);

    /// <summary>What must be set aside today for this period's bills to be paid in time, and for what was paid beyond what was held.</summary>
    public Money Needed => (Due + Overpaid - Held).ClampToZero();

    /// <summary>What bills were paid beyond what was held for them: zero, but in a book that an earlier version let go wrong.</summary>
    public Money Overpaid => Money.Sum(SetAsides.Select(line => (-line.HeldBefore).ClampToZero()), Total.Currency);

    /// <summary>The set-asides by the date of their next due, those without one last.</summary>
    public IEnumerable<SetAsideLine> ByNextDue => SetAsides.OrderBy(line => line.NextDue ?? LocalDate.MaxIsoValue);
}

/// <summary>A bill due in this period, or before it and not yet paid.</summary>
/// <param name="Key">The bill and the date its schedule gives.</param>
/// <param name="Date">The day on which it falls due, moves done.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Essential">Whether it keeps the household going.</param>
/// <param name="Usual">What it is expected to come to.</param>
/// <param name="Amount">What it comes to this time; zero waives it.</param>
/// <param name="Changed">Whether the person changed it.</param>
/// <param name="Paid">Whether it has left the account: proposed for what is due by the payday.</param>
public sealed record DueRow(DueKey Key, LocalDate Date, string Name, bool Essential, Money Usual, Money Amount, bool Changed, bool Paid)
{
    /// <summary>The bill.</summary>
    public BillId BillId => Key.Bill!.Value;

    /// <summary>Whether the person has said what it comes to, now or when it was left open.</summary>
    public bool IsDecided { get; init; }
}

/// <summary>What the account holds for one bill.</summary>
/// <param name="BillId">The bill.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="HeldBefore">What was held.</param>
/// <param name="SetAside">What is added today; below zero where the plan needs it for a bill due sooner.</param>
/// <param name="NextDue">The next due date that is not in this period, or null.</param>
/// <param name="NextAmount">What is due then.</param>
public sealed record SetAsideLine(
    BillId BillId,
    string Name,
    Money HeldBefore,
    Money SetAside,
    LocalDate? NextDue,
    Money NextAmount)
{
    /// <summary>What is held once today's part is added, before anything is paid.</summary>
    public Money HeldAfter => HeldBefore + SetAside;
}
