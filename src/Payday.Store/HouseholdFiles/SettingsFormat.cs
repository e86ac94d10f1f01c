using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Cash;
using Payday.Core.Debts;
using Payday.Core.Households;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>The settings among the outermost fields of a household file.</summary>
internal static class SettingsFormat
{
    private const int MostSlipLines = 6;

    /// <param name="file">The outermost fields.</param>
    /// <param name="currency">The currency; where it could not be read, one that takes any amount.</param>
    /// <param name="isKnown">Whether it could be read.</param>
    public static HouseholdSettings Read(JsonFields file, Currency currency, bool isKnown)
    {
        CashPieces cash = ReadCash(file, currency, isKnown);
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
            [.. (file.Optional("slipLines")?.Items(MostSlipLines) ?? []).Select(line => line.OneLine(NamedList.LongestName))])
        {
            BufferKeeps = file.Optional("bufferKeeps")?.Amount(currency),
        };
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
        if (settings.BufferKeeps is { } keeps)
        {
            json.WriteString("bufferKeeps", keeps.ToPlain());
        }

        json.WriteTexts("slipLines", settings.SlipLines);
    }

    // No notes are known where they could not be read; then nothing is checked against them.
    private static CashPieces ReadCash(JsonFields file, Currency currency, bool isKnown)
    {
        CashPieces defaults = CashDefaults.Codes.Contains(currency.Code) ? CashDefaults.For(currency) : new CashPieces([], []);
        JsonCursor? noteList = file.Optional("notes");
        JsonCursor? coinList = file.Optional("coins");
        ImmutableArray<Money> notes = defaults.Notes;
        if (noteList is not null)
        {
            notes = CashFormat.ReadNotes(noteList, currency, []);
        }
        else if (notes.IsEmpty && isKnown)
        {
            file.Required("notes").Refuse($"The notes of {currency.Code} are not known here; add those in use, such as [\"20\", \"10\"].");
        }

        // A piece that the file calls a note is none of the coins that are usual.
        ImmutableArray<Money> coins = coinList is not null ? CashFormat.ReadPieces(coinList, currency) : [.. defaults.Coins.Except(notes)];
        return new CashPieces(noteList is null or { IsSound: true } ? notes : [], coins);
    }
}
