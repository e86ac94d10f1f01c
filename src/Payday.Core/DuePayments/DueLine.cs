using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;

namespace Payday.Core.DuePayments;

/// <summary>A due of a bill or a debt's minimum that has not left the account, with what there is for it.</summary>
/// <param name="Key">What it is known by.</param>
/// <param name="Name">What the person calls the bill or the debt.</param>
/// <param name="Date">The day on which it falls due.</param>
/// <param name="Rest">What is still to be paid, zero or more; of a minimum to come what its balance asks for, with those before it paid.</param>
/// <param name="Paid">What was paid of it, zero or more.</param>
/// <param name="Has">What the account holds for it: zero to the rest, the earliest due first.</param>
public sealed record DueLine(DueKey Key, string Name, LocalDate Date, Money Rest, Money Paid, Money Has)
{
    /// <summary>Of a minimum, what of the rest was bought with the card, and waits for the debt beside it; zero or more, and all of it there.</summary>
    public Money Bought { get; init; } = Money.Zero(Rest.Currency);

    /// <summary>What the due itself comes to: once that is paid nothing of it is due any more.</summary>
    public Money Own => Rest - Bought;
}
