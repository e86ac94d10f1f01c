using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Bill = Payday.Core.Drafts.BillDraft.Members;
using Schedule = Payday.Core.Drafts.ScheduleDraft.Members;

namespace Payday.Core.Tests.Drafts;

public sealed class DraftPathTests
{
    private static readonly DraftPath<BillDraft, MonthDay?> Day = DraftPath.To(Bill.Schedule, Schedule.Day);
    private static readonly DraftPath<BillDraft, ScheduleKind?> Kind = DraftPath.To(Bill.Schedule, Schedule.Kind);

    [Fact]
    public void Set_InsideAPartThatIsMissing_MakesIt()
    {
        BillDraft bill = Kind.Set(new BillDraft(), ScheduleKind.Monthly);

        Assert.Equal(new ScheduleDraft { Kind = ScheduleKind.Monthly }, bill.Schedule);
        Assert.Null(Day.Get(bill));
    }

    [Fact]
    public void Set_NothingWhereNothingElseIs_TakesThePartOut()
    {
        BillDraft bill = Day.Set(Kind.Set(new BillDraft(), ScheduleKind.Monthly), new MonthDay.Last());

        Assert.Equal(ScheduleKind.Monthly, Day.Set(bill, null).Schedule!.Kind);
        Assert.Null(Kind.Set(Day.Set(bill, null), null).Schedule);
    }

    [Fact]
    public void Belongs_GoesByTheKind()
    {
        Assert.True(Day.Belongs(new BillDraft { Schedule = new() { Kind = ScheduleKind.Monthly } }));
        Assert.False(Day.Belongs(new BillDraft { Schedule = new() { Kind = ScheduleKind.Weekly } }));
        Assert.False(Day.Belongs(new BillDraft()));
    }

    [Fact]
    public void OneOfTwo_Set_KeepsTheOther()
    {
        DraftPath<ScheduleDraft, MonthDay?> first = ScheduleDraft.OneOfTwo(0);
        DraftPath<ScheduleDraft, MonthDay?> second = ScheduleDraft.OneOfTwo(1);

        ScheduleDraft both = first.Set(second.Set(new(), new MonthDay.Last()), new MonthDay.Numbered(15));

        Assert.Equal([new MonthDay.Numbered(15), new MonthDay.Last()], both.Days!.Value);
        Assert.Equal(new MonthDay.Last(), second.Get(first.Set(both, null)));
        Assert.Null(second.Set(first.Set(both, null), null).Days);
    }

    [Fact]
    public void Place_HoldsWhatIsInIt()
    {
        DraftPlace bill = DraftPlace.Of(HouseholdDraft.Members.Bills, 2);
        DraftPlace day = bill.Then(Day.Place);

        Assert.True(bill.Holds(day));
        Assert.True(DraftPlace.Of(HouseholdDraft.Members.Bills).Holds(day));
        Assert.True(DraftPlace.Whole.Holds(day));
        Assert.True(day.Holds(day));
        Assert.False(day.Holds(bill));
        Assert.False(DraftPlace.Of(HouseholdDraft.Members.Bills, 1).Holds(day));
        Assert.False(DraftPlace.Of(HouseholdDraft.Members.Pots, 2).Holds(day));
        Assert.Equal("Bills[2].Schedule.Day", day.ToString());
    }
}
