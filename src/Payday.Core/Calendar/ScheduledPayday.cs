using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Calendar;

/// <summary>A date on which at least one source pays.</summary>
/// <param name="Date">The date on which the money is there, shifts done.</param>
/// <param name="Sources">The ids of the sources that pay, in household order, each once.</param>
/// <param name="IsExtra">
/// Whether every source paying that day has already paid its usual count in that calendar month: 4 for a weekly wage,
/// 2 for a fortnightly one, 1 for one every three weeks or more. Schedules by the month and typed-in dates are never
/// extra, not even where a bank holiday moves a pay into the month before.
/// </param>
public sealed record ScheduledPayday(LocalDate Date, ImmutableArray<SourceId> Sources, bool IsExtra)
{
    /// <summary>The pays that are there: a weekend can move two pays of one source to one day.</summary>
    public ImmutableArray<ScheduledPay> Pays { get; init; } = [.. Sources.Select(source => new ScheduledPay(source, Date))];

    /// <summary>How many pays of a source are there that day; zero for one that doesn't pay then.</summary>
    public int PaysOf(SourceId sourceId) => Pays.Count(pay => pay.SourceId == sourceId);

    /// <summary>What is expected of a source that day, all its pays together; zero from one that doesn't pay then.</summary>
    public Money Expected(IncomeSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return Money.Sum(Pays.Where(pay => pay.SourceId == source.Id).Select(pay => source.ExpectedOn(pay.Scheduled)), source.Expected.Currency);
    }
}
