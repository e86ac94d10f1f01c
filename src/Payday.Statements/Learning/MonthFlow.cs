using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Statements.Learning;

/// <summary>What came in and went out in a whole calendar month, what only moved between the accounts left out.</summary>
/// <param name="Month">The month.</param>
/// <param name="In">The sum of what came in.</param>
/// <param name="Out">The sum of what went out, above zero.</param>
public sealed record MonthFlow(YearMonth Month, Money In, Money Out);
