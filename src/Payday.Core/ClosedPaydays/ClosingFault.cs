using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Pots;
using Payday.Core.Ids;

namespace Payday.Core.ClosedPaydays;

/// <summary>What stands in the way of closing a payday.</summary>
/// <remarks>Pots and debts are named as the person calls them.</remarks>
public abstract record ClosingFault : Fault
{
    /// <summary>The payday is short, and nobody has said what the buffer gives.</summary>
    /// <param name="Short">What the payday is short of, above zero.</param>
    /// <param name="Has">What the buffer has.</param>
    /// <param name="IsAll">Whether nothing else stands in the way without it.</param>
    public sealed record BufferAsked(Money Short, Money Has, bool IsAll) : ClosingFault;

    /// <summary>The buffer is to give more than it has.</summary>
    /// <param name="Has">What it has.</param>
    /// <param name="Gives">What it is to give.</param>
    public sealed record BufferHasLess(Money Has, Money Gives) : ClosingFault;

    /// <summary>What the buffer gives is below zero.</summary>
    public sealed record BufferGivesBelowZero : ClosingFault;

    /// <summary>A bill, a minimum or a pot can't be paid in full.</summary>
    /// <param name="Unpayable">Which, and what lacks.</param>
    public sealed record CantPay(Unpayable Unpayable) : ClosingFault;

    /// <summary>Something is left to place.</summary>
    /// <param name="Amount">How much, above zero.</param>
    public sealed record LeftToPlace(Money Amount) : ClosingFault;

    /// <summary>More is placed than there is.</summary>
    /// <param name="Amount">How much more, above zero.</param>
    public sealed record PlacedTooMuch(Money Amount) : ClosingFault;

    /// <summary>An income is below zero.</summary>
    public sealed record IncomeBelowZero : ClosingFault;

    /// <summary>A fill is below zero.</summary>
    public sealed record FillBelowZero : ClosingFault;

    /// <summary>More is placed on a debt than is owed.</summary>
    /// <param name="DebtId">The debt.</param>
    /// <param name="Debt">What the person calls it.</param>
    public sealed record MoreThanOwed(DebtId DebtId, string Debt) : ClosingFault;

    /// <summary>More is withdrawn than an account with an overdraft can give.</summary>
    /// <param name="Has">What it can give, zero or more.</param>
    /// <param name="Amount">What is withdrawn.</param>
    public sealed record AccountHasLess(Money Has, Money Amount) : ClosingFault;

    /// <summary>The notes of a pot come to more than it has.</summary>
    /// <param name="PotId">The pot.</param>
    /// <param name="Pot">What the person calls it.</param>
    /// <param name="Amount">How much more, above zero.</param>
    public sealed record NotesAbove(PotId PotId, string Pot, Money Amount) : ClosingFault;
}
