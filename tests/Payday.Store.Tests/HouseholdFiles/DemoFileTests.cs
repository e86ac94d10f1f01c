using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Store.HouseholdFiles;

namespace Payday.Store.Tests.HouseholdFiles;

public sealed class DemoFileTests
{
    private static Household Demo => HouseholdFile.Read(DemoFile.Text).Value!;

    [Fact]
    public void Demo_ReadAndWritten_IsTheSameFile()
    {
        Assert.Empty(HouseholdFile.Read(DemoFile.Text).Faults.Select(fault => fault.ToString()));
        Assert.Equal(DemoFile.Text, HouseholdFile.Write(Demo));
    }

    [Fact]
    public void Demo_ShowsEveryKindOfScheduleDayDebtAndPot()
    {
        IEnumerable<Schedule> schedules = Demo.Bills.Select(bill => bill.Schedule).Concat(Demo.Sources.Select(source => source.Schedule));
        IEnumerable<MonthDay> days = schedules.OfType<Schedule.Monthly>().Select(monthly => monthly.Day);

        Assert.Equal(["EveryMonths", "EveryWeeks", "Monthly", "OnDates", "TwiceMonthly"], Kinds(schedules));
        Assert.Equal(["LastWorkingDay", "NthWeekday", "Numbered"], Kinds(days));
        Assert.Equal(["Fixed", "PercentOrFloor"], Kinds(Demo.Debts.Select(debt => debt.Minimum)));
        Assert.Equal(["Ladder", "Reserve", "Sinking", "Spending"], Kinds(Demo.Pots.Select(pot => pot.Kind)));
        Assert.Contains(Demo.Debts, debt => debt.YearlyRate == 0);
        Assert.True(Demo.Pots.Length >= 12);
        Assert.Equal(Enum.GetValues<Place>(), Demo.Pots.Select(pot => pot.Place).Distinct().Order());
    }

    [Fact]
    public void Demo_FirstPayday_IsTheDayAfterTheStart()
    {
        var wage = Assert.IsType<Schedule.EveryWeeks>(Demo.Sources[0].Schedule);

        Assert.Equal(Demo.Start.PlusDays(1), wage.Anchor);
        Assert.Equal(IsoDayOfWeek.Friday, wage.Anchor.DayOfWeek);
    }

    private static IEnumerable<string> Kinds(IEnumerable<object> values) =>
        values.Select(value => value.GetType().Name).Distinct().Order(StringComparer.Ordinal);
}
