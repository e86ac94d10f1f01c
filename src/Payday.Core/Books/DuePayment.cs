using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;

namespace Payday.Core.Books;

/// <summary>That a due of a bill or a debt's minimum has left the account, wholly or in part, or needs no more money.</summary>
/// <remarks>What a payday itself says of a due is in its <see cref="ClosedDue"/>; this is what the person says of it between paydays (design, rule 9).</remarks>
/// <param name="Number">1 for the first, then without a gap.</param>
/// <param name="Key">What the due is known by.</param>
/// <param name="Date">The day on which it left the account.</param>
/// <param name="Amount">How much left it; zero where only the rest was freed.</param>
/// <param name="Completes">Whether nothing of the due is to be paid any more, though less than its amount may have been.</param>
/// <param name="FirstMovement">The number of its first movement.</param>
/// <param name="LastMovement">The number of its last movement; one less than the first where there are none.</param>
public sealed record DuePayment(
    long Number, DueKey Key, LocalDate Date, Money Amount, bool Completes, long FirstMovement, long LastMovement)
{
    /// <summary>Whether it was undone; its movements then have their reverses.</summary>
    public bool Undone { get; init; }

    /// <summary>What was still to be paid of the due when it was entered; null where that isn't known.</summary>
    public Money? Asked { get; init; }
}
