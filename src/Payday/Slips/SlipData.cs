using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Slips;

/// <summary>What a bank slip is for.</summary>
internal enum SlipKind
{
    /// <summary>Notes to fetch.</summary>
    Withdrawal,

    /// <summary>Notes to bring: a cash return.</summary>
    Deposit,
}

/// <summary>What a slip says.</summary>
/// <param name="Date">The day of the visit.</param>
/// <param name="Currency">Of every note.</param>
/// <param name="Style">How numbers are written.</param>
/// <param name="HeadLines">What the person wants at the top, such as a name; nothing else on the slip is private.</param>
/// <param name="Lines">The notes, in any order; values may repeat and counts may be zero.</param>
internal sealed record SlipData(
    LocalDate Date, Currency Currency, NumberStyle Style, ImmutableArray<string> HeadLines, ImmutableArray<NoteLine> Lines)
{
    /// <summary>What the slip is for; <see cref="SlipKind.Withdrawal"/> unless said.</summary>
    public SlipKind Kind { get; init; }

    /// <summary>Whether the notes come from a machine, so that the slip is for the person at it and not for a teller.</summary>
    public bool AtAMachine { get; init; }

    /// <summary>The most that the machine gives in one visit; null for no limit.</summary>
    public Money? Limit { get; init; }

    /// <summary>The trips to the machine, in their order; none for a teller.</summary>
    public ImmutableArray<SlipTrip> Trips { get; init; } = [];

    /// <summary>The pots that want small notes which the machine doesn't give.</summary>
    public ImmutableArray<string> NoSmallMoney { get; init; } = [];
}

/// <summary>A trip to a machine.</summary>
/// <param name="Date">The day.</param>
/// <param name="Notes">What it should give.</param>
internal sealed record SlipTrip(LocalDate Date, ImmutableArray<NoteLine> Notes);
