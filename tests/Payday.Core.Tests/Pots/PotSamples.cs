using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Pots;

/// <summary>Pots and what they depend on, as tests write them.</summary>
internal static class PotSamples
{
    public static PotFacts Facts { get; } = new(
        Usd(0), Usd(0), FillDays(2), new(2026, 3, 6), [], new(2026, 1, 1), null, 0, Usd(5), NumberStyle.CommaPoint);

    /// <summary>So many fill days from 6 March 2026.</summary>
    public static ImmutableArray<LocalDate> FillDays(int count) => [.. Enumerable.Range(0, count).Select(i => new LocalDate(2026, 3, 6).PlusWeeks(i))];

    public static Pot Pot(PotKind kind, Place held = Place.Cash) =>
        new(new PotId("p"), "Pot", held, 1, Usd(0), kind, NoteWishes.None);

    public static FillProposal Propose(PotKind kind, PotFacts facts) => PotFills.Propose(Pot(kind), facts);

    /// <summary>A sinking pot that is still saved for by a date.</summary>
    public static SinkingState Saving(LocalDate by) => new(SinkingStage.Saving, by, Usd(0));

    /// <summary>A month with nothing in it so far, or what is given.</summary>
    public static ImmutableArray<MonthFills> Months(MonthPaydays month, decimal soFar = 0) => [new MonthFills(month, Usd(soFar))];

    /// <summary>Paydays of March 2026 by their days; an extra one is written with a plus, e.g. <c>6 20 +27</c>.</summary>
    public static MonthPaydays March(string days)
    {
        string[] all = days.Split(' ');
        return new(new YearMonth(2026, 3), Dates(all.Where(day => day[0] != '+')), Dates(all));

        static ImmutableArray<LocalDate> Dates(IEnumerable<string> days) =>
            [.. days.Select(day => new LocalDate(2026, 3, int.Parse(day)))];
    }
}
