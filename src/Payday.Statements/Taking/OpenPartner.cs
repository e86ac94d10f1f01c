using Payday.Core.BankLines;

namespace Payday.Statements.Taking;

/// <summary>A line of the account that the bank doesn't show.</summary>
/// <param name="Line">The line.</param>
/// <param name="Age">Days from its date to the statement's end; below zero for a later date.</param>
/// <param name="IsOnItsWay">Whether it is so new, or a cheque, that the bank may well show it later.</param>
public sealed record OpenPartner(AccountLine Line, int Age, bool IsOnItsWay);
