using Payday.Core.Amounts;

namespace Payday.Core.Books;

/// <summary>What refunds took off a purchase that is still owed back.</summary>
/// <param name="Amount">How much less the account is short of, zero or more.</param>
/// <param name="Cash">How much less cash the pot owes for it, zero or more; it is in the pot again.</param>
internal sealed record RefundedPart(Money Amount, Money Cash)
{
    public static RefundedPart operator +(RefundedPart left, RefundedPart right) => new(left.Amount + right.Amount, left.Cash + right.Cash);
}
