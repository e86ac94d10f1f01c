using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Pots;

namespace Payday.Core.Households;

/// <summary>What comes in and what is asked for in a month of a household, to be held against each other while it is set up.</summary>
/// <remarks>
/// What falls in the twelve months from a day on, over twelve, half to even at the minor unit: a wage every two weeks is 26/12 of it, a
/// yearly bill a twelfth. A pot with a target asks for what it lacks over the months to its date, as it will until then.
/// Common practice, no source.
/// </remarks>
/// <param name="ComesIn">Of all sources, as expected.</param>
/// <param name="Bills">Of all bills.</param>
/// <param name="Minimums">The least of all debts, at what is owed at the start.</param>
/// <param name="Pots">Of all pots.</param>
public sealed record UsualMonth(Money ComesIn, Money Bills, Money Minimums, Money Pots)
{
    private const int Months = 12;

    /// <summary>What is left of what comes in; below zero it is missing.</summary>
    public Money Left => ComesIn - Bills - Minimums - Pots;

    /// <summary>The month of a household.</summary>
    /// <param name="household">The household.</param>
    /// <param name="from">The first day of the twelve months; what fell before it, in the same month too, is none of them.</param>
    public static UsualMonth Of(Household household, LocalDate from)
    {
        ArgumentNullException.ThrowIfNull(household);
        Currency currency = household.Currency;
        LocalDate to = from.PlusMonths(Months).PlusDays(-1);
        BankHolidays holidays = household.Holidays;
        LocalDate[] paydays = [.. household.Paydays.Between(from, to).Select(payday => payday.Date)];
        return new(
            Twelfth(household.Sources.SelectMany(source => Times(source.Schedule, source.Until).Select(source.ExpectedOn)), currency),
            Twelfth(household.Bills.SelectMany(bill => Times(bill.Schedule, bill.Until).Select(bill.AmountOn)), currency),
            Twelfth(household.Debts.SelectMany(debt => Times(debt.Schedule, null).Select(_ => Least(debt))), currency),
            Money.Sum(household.Pots.Select(pot => OfPot(pot, household, paydays, from, to)), currency));

        IEnumerable<LocalDate> Times(Schedule schedule, LocalDate? until) =>
            Occurrences.Between(schedule, Shift.None, holidays, from, to, until).Select(time => time.Scheduled);
    }

    private static Money Least(Debt debt) => debt.Minimum.Due(debt.Opening, debt.Opening.MonthOfInterest(debt.YearlyRate));

    private static Money OfPot(Pot pot, Household household, LocalDate[] paydays, LocalDate from, LocalDate to)
    {
        Currency currency = household.Currency;
        Money has = household.Opening.Pots.GetValueOrDefault(pot.Id, Money.Zero(currency));
        switch (pot.Kind)
        {
            case PotKind.Spending { Per: FillPer.Week } spending:
                return Twelfth(Occurrences.Between(new Schedule.EveryWeeks(1, household.Settings.WeekOf(from)), Shift.None, BankHolidays.None, from, to).Select(day => spending.AmountOn(day.Date)), currency);
            case PotKind.Spending { Per: FillPer.Payday } spending:
                return Twelfth(paydays.Select(spending.AmountOn), currency);
            case PotKind.Spending spending:
                return Twelfth(Enumerable.Range(0, Months).Select(month => spending.AmountOn(from.PlusMonths(month))), currency);
            case PotKind.Sinking { Finished: true }:
                return Money.Zero(currency);
            case PotKind.Sinking sinking:
                int months = Math.Max(1, Period.Between(from, sinking.By, PeriodUnits.Months).Months);
                return Part((sinking.TargetBy(sinking.By) - has).ClampToZero(), months);
            case PotKind.Ladder ladder:
                int done = LadderSteps.Done(ladder, has);
                return Part(LadderSteps.SumOf(ladder, Math.Min(ladder.Steps, done + paydays.Length)) - LadderSteps.SumOf(ladder, done), Months);
            case PotKind.Reserve reserve:
                return Part(Money.Min(reserve.PerPayday * paydays.Length, (reserve.LevelOn(to) - has).ClampToZero()), Months);
            default:
                throw new ArgumentOutOfRangeException(nameof(pot), pot.Kind, "There is no rule for it.");
        }
    }

    private static Money Twelfth(IEnumerable<Money> year, Currency currency) => Part(Money.Sum(year, currency), Months);

    private static Money Part(Money whole, int parts) =>
        Money.FromMinorUnits(decimal.ToInt64(Math.Round(whole.MinorUnits / (decimal)parts, 0, MidpointRounding.ToEven)), whole.Currency);
}
