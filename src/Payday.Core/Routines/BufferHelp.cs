using Payday.Core.Amounts;

namespace Payday.Core.Routines;

/// <summary>What the account's buffer gives to a payday (design, rule 10).</summary>
/// <param name="Short">What the day lacks before the buffer helps and anything is cut, zero or more.</param>
/// <param name="Has">What the account's buffer has, zero or more; loose notes at home don't help an account.</param>
/// <param name="Keeps">What it keeps at least, or null where the household hasn't said.</param>
/// <param name="Proposed">What it gives by itself: what is lacking, as far as it is above what it keeps; nothing where that isn't known.</param>
/// <param name="Amount">What it gives: decided by the person, or proposed.</param>
/// <param name="Changed">Whether the person decided.</param>
/// <remarks>No habit drains the buffer in silence: below what it keeps, and without a shortfall, it gives only by hand.</remarks>
public sealed record BufferHelp(Money Short, Money Has, Money? Keeps, Money Proposed, Money Amount, bool Changed)
{
    /// <summary>Whether the person has to say what it gives before the payday can be closed.</summary>
    public bool IsAsked => Short.IsPositive && Has.IsPositive && Keeps is null && !Changed;

    /// <summary>What it gives to a day.</summary>
    /// <param name="lacking">What the day lacks; below zero where it lacks nothing.</param>
    /// <param name="has">What the account's buffer has.</param>
    /// <param name="keeps">What it keeps at least, or null.</param>
    /// <param name="decided">What the person decided, or null.</param>
    internal static BufferHelp Of(Money lacking, Money has, Money? keeps, Money? decided)
    {
        Money missing = lacking.ClampToZero();
        Money proposed = keeps is { } least
            ? Money.Min(missing, (has - least).ClampToZero())
            : Money.Zero(lacking.Currency);
        return new BufferHelp(missing, has.ClampToZero(), keeps, proposed, decided ?? proposed, decided is not null);
    }
}
