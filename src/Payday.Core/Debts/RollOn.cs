using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>What the end of one debt sets free for another: its minimum, or the part of the last one that it didn't need.</summary>
/// <param name="From">The debt that ended.</param>
/// <param name="To">The debt that gets it.</param>
/// <param name="First">The first month in which something of it comes.</param>
/// <param name="Total">All of it until the other one ends, above zero.</param>
/// <remarks>Of a month, what debts set free is spent in the order in which they are listed, so that each part has one debt that it comes from.</remarks>
public sealed record RollOn(DebtId From, DebtId To, YearMonth First, Money Total);
