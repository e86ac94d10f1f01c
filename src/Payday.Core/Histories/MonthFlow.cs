using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Histories;

/// <summary>A calendar month: what came in and went out, and how the household stood at its end.</summary>
/// <param name="Month">The month.</param>
/// <param name="Flow">What came in and went out.</param>
/// <param name="Saved">In pots that have something to reach, and in the buffer, at the month's end.</param>
/// <param name="Owed">On all debts at the month's end.</param>
public sealed record MonthFlow(YearMonth Month, Flow Flow, Money Saved, Money Owed);
