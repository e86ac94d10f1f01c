using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Debts;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.HouseholdDraft.Members;
using Settings = Payday.Core.Drafts.SettingsDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>The outermost fields of a household file, but for its version.</summary>
internal static class HouseholdFormat
{
    private const string Currency = "currency";
    private const string SurplusOrder = "surplusOrder";

    public static PartFormat<HouseholdDraft> Fields { get; } = new(
        FileField.Of(Members.Name, "name", FileValues.Line),
        FileField.Of(Members.Start, "start", FileValues.Date),
        FileField.OfSetting(Settings.Currency, Currency, FileValues.Currency),
        FileField.OfSetting(Settings.Notes, "notes", FileValues.Pieces),
        FileField.OfSetting(Settings.Coins, "coins", FileValues.Pieces),
        FileField.OfSetting(Settings.Numbers, "numbers", new WordValue<NumberStyle>(Words.NumberStyles)) with { WrittenAfter = Currency },
        FileField.OfSetting(Settings.FillDay, "fillDay", new WordValue<IsoDayOfWeek>(Words.Weekdays)),
        FileField.OfSetting(Settings.Holidays, "holidays", new HolidayFormat()),
        FileField.OfSetting(Settings.SetAsides, "setAsides", new WordValue<SetAsideMode>(Words.SetAsideModes)),
        FileField.OfSetting(Settings.Bank, "bank", BankFormat.Value),
        FileField.OfSetting(Settings.CardRounding, "cardRounding", new WordValue<CardRounding>(Words.CardRoundings)),
        FileField.OfSetting(Settings.SurplusOrder, SurplusOrder, new WordValue<DebtOrder>(Words.DebtOrders)),
        FileField.OfSetting(Settings.SlipLines, "slipLines", new LinesValue(HouseholdLimits.MostSlipLines)),
        FileField.OfSetting(Settings.BufferKeeps, "bufferKeeps", FileValues.Amount) with { WrittenAfter = SurplusOrder },
        FileField.OfSetting(Settings.Look, "look", new WordValue<ScreenLook>(Words.Looks)),
        FileField.OfSetting(Settings.Overdraft, "overdraft", FileValues.Amount) with { WrittenAfter = "bufferKeeps" },
        FileField.Of(Members.Opening, "opening", OpeningFormat.Value),
        FileField.Of(Members.Sources, "sources", new ItemsValue<SourceDraft>(SourceFormat.Fields)),
        FileField.Of(Members.Bills, "bills", new ItemsValue<BillDraft>(BillFormat.Fields)),
        FileField.Of(Members.Debts, "debts", new ItemsValue<DebtDraft>(DebtFormat.Fields)),
        FileField.Of(Members.Pots, "pots", new ItemsValue<PotDraft>(PotFormat.Fields)));
}
