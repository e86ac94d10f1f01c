using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Cash;

/// <summary>Which notes go to which pot and week, and which to fetch.</summary>
/// <remarks>
/// For every value: the notes of all parts = withdrawn + on hand - returned. For every part: its notes and what
/// is kept back add up to its amount.
/// </remarks>
/// <param name="Currency">The currency of all of it.</param>
/// <param name="Parts">One for each part asked for, in the same order.</param>
/// <param name="Withdraw">Notes to fetch: value in minor units to count, above zero.</param>
/// <param name="Return">Notes on hand that no part uses: value in minor units to count, above zero.</param>
/// <param name="Reused">Notes on hand that go into parts: value in minor units to count, above zero.</param>
/// <param name="Faults">Wishes that can't be met, in the order of the parts.</param>
/// <param name="LimitShort">How much higher the machine's limit must be to fetch everything; zero if it is high enough or there is none.</param>
/// <param name="Proven">Whether no better plan exists; false only where the search met its bound.</param>
public sealed record NotePlan(
    Currency Currency,
    ImmutableArray<PartNotes> Parts,
    Notes Withdraw,
    Notes Return,
    Notes Reused,
    ImmutableArray<NoteFault> Faults,
    Money LimitShort,
    bool Proven)
{
    /// <summary>The value to fetch.</summary>
    public Money WithdrawTotal => Withdraw.Worth(Currency);

    /// <summary>The value of the notes on hand that are used again.</summary>
    public Money ReusedTotal => Reused.Worth(Currency);

    /// <summary>How many notes all parts hold.</summary>
    public int NoteCount => Parts.Sum(part => part.NoteCount);
}
