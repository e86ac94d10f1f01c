using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Tests.Drafts;

/// <summary>A draft with one of everything, which is a household; to be broken in tests.</summary>
internal static class SmallDraft
{
    public static HouseholdDraft Whole { get; } = new()
    {
        Name = "Reed house",
        Start = new(2026, 3, 5),
        Settings = new()
        {
            Currency = Currency.FromCode("USD"),
            Numbers = NumberStyle.CommaPoint,
            Notes = [100, 20, 5],
            Coins = [0.25m],
            FillDay = IsoDayOfWeek.Friday,
            Holidays = new() { Set = HolidaySet.UnitedStates, Extra = [new(2026, 11, 27)] },
            Bank = new() { Kind = BankKind.Machine, Notes = [20], Limit = 500 },
            BufferKeeps = 300,
            SlipLines = ["Thank you"],
        },
        Opening = new() { Account = 900, LooseNotes = [new(20, 3)] },
        Sources = [new() { Name = "Wage", Schedule = new() { Kind = ScheduleKind.Fortnightly, Anchor = new(2026, 3, 6) }, Shift = Shift.Before, Expected = 1712.35m }],
        Bills = [new() { Name = "Rent", Amount = 840, Schedule = new() { Kind = ScheduleKind.Monthly, Day = new MonthDay.Numbered(31) }, Shift = Shift.Before, Essential = true, SetAside = 300 }],
        Debts = [new() { Name = "Card", Balance = 450, Rate = 0.1999m, Minimum = new() { Kind = MinimumKind.Part, Percent = 0.02m, Floor = 20 }, Due = new MonthDay.Last() }],
        Pots =
        [
            new() { Name = "Food", Kind = PotUse.Spending, Amount = 85, Per = FillPer.Week, Place = Place.Cash, Floor = 60, TopNote = 20, Small = new() { Note = 5, AtLeast = 25 } },
            new() { Name = "Roof", Kind = PotUse.Sinking, Target = 1200, By = new(2027, 5, 1), Place = Place.Account, Has = 150 },
        ],
    };

    public static HouseholdDraft WithBill(Func<BillDraft, BillDraft> change) => Whole with { Bills = [change(Whole.Bills!.Value[0])] };

    public static HouseholdDraft WithDebt(Func<DebtDraft, DebtDraft> change) => Whole with { Debts = [change(Whole.Debts!.Value[0])] };

    public static HouseholdDraft WithFood(Func<PotDraft, PotDraft> change) => Whole with { Pots = [change(Whole.Pots!.Value[0]), Whole.Pots!.Value[1]] };

    public static HouseholdDraft WithRoof(Func<PotDraft, PotDraft> change) => Whole with { Pots = [Whole.Pots!.Value[0], change(Whole.Pots!.Value[1])] };

    public static HouseholdDraft With(Func<SettingsDraft, SettingsDraft> change) => Whole with { Settings = change(Whole.Settings) };
}
