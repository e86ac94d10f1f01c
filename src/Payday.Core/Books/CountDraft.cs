using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;
using Payday.Core.Pots;

namespace Payday.Core.Books;

/// <summary>A count begun: only what the person entered, so that a half-finished count goes on where it stopped.</summary>
/// <param name="Date">The day that is counted for.</param>
/// <param name="Entries">By pot id: what was entered.</param>
public sealed record CountDraft(LocalDate Date, ImmutableSortedDictionary<PotId, CountEntry> Entries)
{
    /// <summary>A count in which nothing has been entered.</summary>
    public CountDraft(LocalDate date)
        : this(date, ImmutableSortedDictionary<PotId, CountEntry>.Empty)
    {
    }

    /// <summary>The draft with what was entered for a pot.</summary>
    public CountDraft With(PotId potId, CountEntry entry) => this with { Entries = Entries.SetItem(potId, entry) };

    /// <summary>The draft without what was entered for a pot.</summary>
    public CountDraft Without(PotId potId) => this with { Entries = Entries.Remove(potId) };
}

/// <summary>What was entered for one pot.</summary>
/// <param name="Left">What is left, without cash that is owed back; not looked at where notes are given.</param>
public sealed record CountEntry(Money Left)
{
    /// <summary>By value in minor units: all notes and coins in it, owed-back cash included; null where an amount was typed.</summary>
    public ImmutableSortedDictionary<long, int>? Notes { get; init; }

    /// <summary>What is neither there nor known to be spent: zero or more, in the currency of <see cref="Left"/>.</summary>
    public Money Missing { get; init; } = Money.Zero(Left.Currency);

    /// <summary>Whether more being left than was there is taken as found, rather than refused.</summary>
    public bool IsFind { get; init; }

    /// <summary>What the person calls what is missing or found.</summary>
    public string DifferenceName { get; init; } = "";

    /// <summary>What becomes of what is left, or null for what the pot proposes.</summary>
    public CountThen? Then { get; init; }
}

/// <summary>What becomes of what is left.</summary>
/// <param name="MovesOnTo">Where it moves on to; null where it stays.</param>
public sealed record CountThen(MoveTarget? MovesOnTo)
{
    /// <summary>It stays in the pot.</summary>
    public static CountThen Stays { get; } = new((MoveTarget?)null);
}
