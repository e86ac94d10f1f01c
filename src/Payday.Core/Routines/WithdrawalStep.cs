using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>The cash pots in notes. Worked out by <see cref="WithdrawalRules"/>.</summary>
/// <param name="Pots">A row a cash pot that gets anything.</param>
/// <param name="Loose">By note value in minor units: the loose notes at home.</param>
/// <param name="Plan">Which notes go where.</param>
public sealed record WithdrawalStep(
    ImmutableArray<CashPotRow> Pots,
    Notes Loose,
    NotePlan Plan)
{
    /// <summary>The owed-back notes that may be used again this time; none unless the draft says so.</summary>
    public ImmutableArray<ReturnedPot> OwedBack { get; init; } = [];

    /// <summary>By note value: the loose notes at home afterwards.</summary>
    public Notes LooseAfter =>
        NoteOrigins.Of(this).Aggregate(Loose, (left, pot) => left.Less(pot.Loose));

    /// <summary>The owed-back notes that go into pots, by the pot that owed them.</summary>
    public ImmutableArray<ReturnedPot> OwedBackReused =>
    [
        .. NoteOrigins.Of(this)
            .SelectMany(pot => pot.OwedBack)
            .GroupBy(given => given.From)
            .Select(given => (given.Key, Notes: Notes.Sum(given.Select(part => part.Notes))))
            .Select(given => new ReturnedPot(given.Key, given.Notes.Worth(Plan.Currency), given.Notes)),
    ];

    /// <summary>All that stays in the account for the pots' next fill.</summary>
    public Money KeptBack => Money.Sum(Pots.Select(row => row.KeptBack), Plan.Currency);
}

/// <summary>A cash pot and its weeks.</summary>
/// <param name="Pot">The pot.</param>
/// <param name="Amount">Today's fill and placements, and what was kept back before.</param>
/// <param name="Weeks">Its parts, with the notes of each.</param>
/// <param name="KeptBack">What no note can make; stays in the account for its next fill.</param>
public sealed record CashPotRow(Pot Pot, Money Amount, ImmutableArray<WeekPart> Weeks, Money KeptBack)
{
    /// <summary>What would be kept back with other notes for one of its parts; below zero they are more than it has, which is refused.</summary>
    /// <param name="week">One of its parts.</param>
    /// <param name="notes">The notes for it.</param>
    public Money LeftWith(WeekPart week, Notes notes)
    {
        ArgumentNullException.ThrowIfNull(week);
        ArgumentNullException.ThrowIfNull(notes);
        return KeptBack + week.Amount - notes.Worth(Amount.Currency);
    }
}

/// <summary>A pot's part for one week.</summary>
/// <param name="Week">The fill day, or null for the whole period.</param>
/// <param name="Notes">By note value in minor units: how many.</param>
/// <param name="Amount">What the notes come to.</param>
/// <param name="Share">The pot's share for the week, of which the notes make as much as they can.</param>
/// <param name="Changed">Whether the person chose the notes.</param>
public sealed record WeekPart(LocalDate? Week, Notes Notes, Money Amount, Money Share, bool Changed);
