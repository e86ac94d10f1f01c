using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Cash;
using Payday.Core.Debts;
using Payday.Core.Households;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>The settings among the outermost fields of a household file.</summary>
internal static class SettingsFormat
{
    private const int MostSlipLines = 6;

    public static HouseholdSettings Read(JsonFields file, Currency currency)
    {
        CashPieces cash = ReadCash(file, currency);
        return new HouseholdSettings(
            currency,
            file.Optional("numbers")?.OneOf(Words.NumberStyles) ?? NumberStyle.CommaPoint,
            cash,
            file.Required("fillDay").OneOf(Words.Weekdays),
            HolidayFormat.Read(file.Required("holidays")),
            file.Optional("setAsides")?.OneOf(Words.SetAsideModes) ?? SetAsideMode.Level,
            file.Optional("bank") is { } bank ? BankFormat.Read(bank, currency, cash.Notes) : new CashSource.Teller(),
            file.Optional("cardRounding")?.OneOf(Words.CardRoundings) ?? CardRounding.Up,
            file.Optional("surplusOrder")?.OneOf(Words.DebtOrders) ?? DebtOrder.SmallestBalance,
            [.. (file.Optional("slipLines")?.Items(MostSlipLines) ?? []).Select(line => line.OneLine(NamedList.LongestName))]);
    }

    public static void Write(Utf8JsonWriter json, HouseholdSettings settings)
    {
        json.WriteString("currency", settings.Currency.Code);
        json.WriteString("numbers", settings.Numbers.Sample);
        CashFormat.WritePieces(json, "notes", settings.Cash.Notes);
        CashFormat.WritePieces(json, "coins", settings.Cash.Coins);
        json.WriteString("fillDay", Words.Weekdays.WordFor(settings.FillDay));
        HolidayFormat.Write(json, "holidays", settings.Holidays);
        json.WriteString("setAsides", Words.SetAsideModes.WordFor(settings.SetAsides));
        BankFormat.Write(json, "bank", settings.Bank);
        json.WriteString("cardRounding", Words.CardRoundings.WordFor(settings.CardRounding));
        json.WriteString("surplusOrder", Words.DebtOrders.WordFor(settings.SurplusOrder));
        json.WriteTexts("slipLines", settings.SlipLines);
    }

    // No notes are known where they could not be read; then nothing is checked against them.
    private static CashPieces ReadCash(JsonFields file, Currency currency)
    {
        JsonCursor field = file.Required("notes");
        ImmutableArray<Money> notes = CashFormat.ReadNotes(field, currency, []);
        ImmutableArray<Money> coins = file.Optional("coins") is { } list ? CashFormat.ReadPieces(list, currency) : [];
        return new CashPieces(field.IsSound ? notes : [], coins);
    }
}
