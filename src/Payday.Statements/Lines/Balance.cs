using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Statements.Lines;

/// <summary>What the bank says was on the account.</summary>
/// <param name="Amount">Below zero where the account is overdrawn. Its currency is the one written beside it, which may not be the statement's.</param>
/// <param name="Date">The day it is of; null where the file doesn't say.</param>
/// <param name="Place">The line of the file where it stands, from 1.</param>
public sealed record Balance(Money Amount, LocalDate? Date, int Place);
