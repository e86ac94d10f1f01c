using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Tests.Lives;

/// <summary>A line that a bank would show.</summary>
/// <param name="Date">The day on which it happened.</param>
/// <param name="Amount">Above zero what came in, below what went out.</param>
/// <param name="Text">What the bank writes: the name of whoever it is with, whatever the case, or of what it is.</param>
internal sealed record BankLine(LocalDate Date, Money Amount, string Text);
