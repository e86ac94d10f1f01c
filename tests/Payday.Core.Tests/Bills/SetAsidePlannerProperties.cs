using CsCheck;
using Payday.Core.Bills;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Bills.Plans;

namespace Payday.Core.Tests.Bills;

public class SetAsidePlannerProperties
{
    private static readonly Gen<SetAsideMode> SomeMode = Gen.Enum<SetAsideMode>();

    /// <summary>Live through the plan day by day: what is short on a due's date is what the plan said, nothing else.</summary>
    [Fact]
    public void Plan_LivedThrough_IsShortOnlyWhereItSaidSo() =>
        Gen.Select(SomeCase, SomeMode).Sample(
            (given, mode) =>
            {
                SetAsidePlan plan = given.Plan(mode);
                long money = given.Held.MinorUnits;
                long owed = 0;
                int row = 0;
                List<LateDue> late = [];
                foreach (Due due in given.Dues.OrderBy(due => due.Date))
                {
                    for (; row < plan.Rows.Length && plan.Rows[row].Date <= due.Date; row++)
                    {
                        money += plan.Rows[row].SetAside.MinorUnits;
                    }

                    owed += due.Amount.MinorUnits;
                    long missing = Math.Min(owed - money, due.Amount.MinorUnits);
                    if (missing > 0)
                    {
                        late.Add(new LateDue(due, Cents(missing)));
                    }
                }

                Assert.Equal(late, plan.Late);
            },
            iter: 2000);

    /// <summary>As they fall: each payday brings what its period lacks, or all of its pay, found by walking the paydays.</summary>
    [Fact]
    public void Plan_AsTheyFall_EachPaydayBringsWhatItsPeriodLacksOrAllItsPay() =>
        SomeCase.Sample(
            given =>
            {
                long[] setAside = SetAsides(given.Plan(SetAsideMode.AsTheyFall));
                long before = given.Held.MinorUnits;
                for (int k = 0; k < setAside.Length; k++)
                {
                    long due = given.Dues
                        .Where(one => k + 1 == setAside.Length || one.Date < given.Paydays[k + 1].Date)
                        .Sum(one => one.Amount.MinorUnits);
                    long lacking = Math.Max(0, due - before);
                    Assert.Equal(given.IncomeIsKnown ? Math.Min(lacking, given.Paydays[k].Income.MinorUnits) : lacking, setAside[k]);
                    before += setAside[k];
                }
            },
            iter: 2000);

    [Fact]
    public void Plan_Level_IsLateOnlyWhereNoPlanCanBeOnTime() =>
        SomeCase.Sample(
            given =>
            {
                bool canBeOnTime = given.Dues.All(due =>
                {
                    long owed = given.Dues.Where(other => other.Date <= due.Date).Sum(other => other.Amount.MinorUnits);
                    bool unlimited = !given.IncomeIsKnown && given.Paydays.Any(payday => payday.Date <= due.Date);
                    return unlimited || owed <= given.Held.MinorUnits
                        + given.Paydays.Where(payday => payday.Date <= due.Date).Sum(payday => payday.Income.MinorUnits);
                });
                return canBeOnTime == given.Plan(SetAsideMode.Level).Late.IsEmpty;
            },
            iter: 2000);

    [Fact]
    public void Plan_Always_TakesNothingBackAndAddsUp() =>
        Gen.Select(SomeCase, SomeMode).Sample(
            (given, mode) =>
            {
                SetAsidePlan plan = given.Plan(mode);
                long[] total = RunningTotal(SetAsides(plan));
                long[] due = RunningTotal(plan.Rows.Select(row => row.Due.MinorUnits));

                Assert.All(plan.Rows, row => Assert.False(row.SetAside.IsNegative));
                Assert.True(mode == SetAsideMode.AsTheyFall || given.Least.LastOrDefault() == total.LastOrDefault());
                Assert.All(total.Zip(given.Income), pair => Assert.True(!given.IncomeIsKnown || pair.First <= pair.Second));
                Assert.Equal(
                    total.Zip(due, (s, d) => Math.Max(0, given.Held.MinorUnits + s - d)),
                    plan.Rows.Select(row => row.HeldAfter.MinorUnits));
                if (!plan.Rows.IsEmpty)
                {
                    Assert.Equal(given.Dues.Sum(one => one.Amount.MinorUnits), due[^1]);
                }
            },
            iter: 2000);

    [Fact]
    public void FromHeldAndFromPayday_Together_PayTheEarliestFirst() =>
        Gen.Select(SomeCase, SomeMode).Sample(
            (given, mode) =>
            {
                SetAsidePlan plan = given.Plan(mode);
                DueFunding[] parts =
                [
                    .. DueFunding.FromHeld(given.Held, given.Dues),
                    .. plan.Rows.SelectMany((_, k) => DueFunding.FromPayday(plan, k, given.Held, given.Dues)),
                ];
                Due[] ordered = [.. given.Dues.OrderBy(due => due.Date)];

                // In order, no due above its amount, and only the last one that gets anything may still lack some.
                int[] places = [.. parts.Select(part => Array.FindIndex(ordered, due => ReferenceEquals(due, part.Due)))];
                Assert.Equal(places.Order(), places);
                long paid = parts.Sum(part => part.Amount.MinorUnits);
                long owed = given.Dues.Sum(due => due.Amount.MinorUnits);
                Assert.Equal(Math.Min(owed, given.Held.MinorUnits + SetAsides(plan).Sum()), paid);
                for (int i = 0; i < ordered.Length; i++)
                {
                    long before = ordered.Take(i).Sum(due => due.Amount.MinorUnits);
                    Assert.Equal(
                        Math.Clamp(paid - before, 0, ordered[i].Amount.MinorUnits),
                        parts.Where((_, p) => places[p] == i).Sum(part => part.Amount.MinorUnits));
                }
            },
            iter: 1000);
}
