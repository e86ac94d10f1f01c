using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Status;

/// <summary>What came of the last reconciliation.</summary>
/// <param name="Date">The day of the bank's balance.</param>
/// <param name="Difference">By how much the bank had more, or less where it is below zero, than it should; zero where they agreed.</param>
public sealed record BankAgreement(LocalDate Date, Money Difference);
