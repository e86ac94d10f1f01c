using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;

namespace Payday.Core.ItemLines;

/// <summary>What has to be known of a household to read a line of it.</summary>
/// <param name="Currency">Its currency.</param>
/// <param name="Numbers">How it writes numbers.</param>
/// <param name="Order">How it writes two figures of a date that could both be the day.</param>
/// <param name="From">The day from which a date without a year is the next one.</param>
public sealed record LineFacts(Currency Currency, NumberStyle Numbers, DateOrder Order, LocalDate From);
