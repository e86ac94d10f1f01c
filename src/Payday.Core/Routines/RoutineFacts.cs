using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Calendar;

namespace Payday.Core.Routines;

/// <summary>What every step needs to know of the day.</summary>
/// <param name="Book">The book.</param>
/// <param name="Draft">The decisions.</param>
/// <param name="Payday">The payday.</param>
/// <param name="Period">Its pay period.</param>
/// <param name="Holidays">The household's bank holidays.</param>
/// <param name="Ahead">The paydays after it, as far as dues are looked for.</param>
/// <param name="Months">The calendar months that it carries a part of.</param>
internal sealed record RoutineFacts(
    Book Book,
    RoutineDraft Draft,
    ScheduledPayday Payday,
    PayPeriod Period,
    BankHolidays Holidays,
    ImmutableArray<ScheduledPayday> Ahead,
    ImmutableArray<MonthPaydays> Months);
