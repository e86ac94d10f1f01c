using Payday.Core.Amounts;

namespace Payday.Core.Routines;

/// <summary>What of a payday pays off an overdraft, before anything else is placed (design, section 4).</summary>
/// <param name="Owed">How far the account is below zero beside what it holds, zero or more.</param>
/// <param name="Proposed">What comes in, as far as the overdraft takes it.</param>
/// <param name="Amount">What pays it off: as decided by the person, but no more than is proposed; or the proposal.</param>
/// <param name="Changed">Whether the person decided.</param>
/// <remarks>
/// What comes in is on the account, so the bank counts it against the overdraft whatever is planned with it. Less than that
/// spends into the overdraft again, which the bank's terms allow or not: only the person can say so.
/// </remarks>
public sealed record OverdraftPayoff(Money Owed, Money Proposed, Money Amount, bool Changed)
{
    /// <summary>What is left of the overdraft.</summary>
    public Money Rest => Owed - Amount;

    /// <summary>What pays it off.</summary>
    /// <param name="owed">How far the account is below zero beside what it holds, zero or more.</param>
    /// <param name="own">What came in and was carried over; below zero it pays nothing off.</param>
    /// <param name="decided">What the person decided, zero or more, or null.</param>
    internal static OverdraftPayoff Of(Money owed, Money own, Money? decided)
    {
        Money proposed = Money.Min(owed, own.ClampToZero());
        return new OverdraftPayoff(owed, proposed, decided is { } amount ? Money.Min(amount, proposed) : proposed, decided is not null);
    }
}
