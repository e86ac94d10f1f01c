using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.Ledgers;

/// <summary>What doesn't hold of a ledger, or why a movement of it can't be undone.</summary>
public abstract record LedgerFault : Fault
{
    /// <summary>There is no movement of that number.</summary>
    /// <param name="Number">The number.</param>
    public sealed record NoSuchMovement(long Number) : LedgerFault;

    /// <summary>The movement is undone already.</summary>
    /// <param name="Number">Its number.</param>
    public sealed record UndoneAlready(long Number) : LedgerFault;

    /// <summary>The movement itself undoes another.</summary>
    /// <param name="Number">Its number.</param>
    public sealed record UndoesAnother(long Number) : LedgerFault;

    /// <summary>The purposes in a place don't add up to what is there.</summary>
    /// <param name="Place">The place.</param>
    /// <param name="Purposes">What they add up to.</param>
    /// <param name="There">What is there.</param>
    public sealed record PurposesDiffer(Place Place, Money Purposes, Money There) : LedgerFault;

    /// <summary>All ends together are not zero.</summary>
    /// <param name="Total">What they come to.</param>
    public sealed record NotBalanced(Money Total) : LedgerFault;

    /// <summary>A purpose in cash is below zero.</summary>
    /// <param name="End">Which.</param>
    /// <param name="Amount">What it has, below zero.</param>
    public sealed record CashBelowZero(LedgerEnd End, Money Amount) : LedgerFault;

    /// <summary>A purpose in the account is below zero that may not be.</summary>
    /// <param name="End">Which.</param>
    /// <param name="Amount">What it has, below zero.</param>
    public sealed record Overdrawn(LedgerEnd End, Money Amount) : LedgerFault;
}
