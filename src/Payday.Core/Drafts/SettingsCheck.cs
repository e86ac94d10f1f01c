using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Debts;
using Payday.Core.Households;
using Members = Payday.Core.Drafts.SettingsDraft.Members;

namespace Payday.Core.Drafts;

/// <summary>Makes the settings of a household of a draft, and says what has its usual answer where it is left out.</summary>
internal static class SettingsCheck
{
    public static HouseholdSettings Of(SettingsDraft settings, DraftCheck check)
    {
        bool isKnown = check.IsThere(settings.Currency, DraftPlace.Of(Members.Currency));
        CashPieces cash = Cash(settings, isKnown, check);
        return new HouseholdSettings(
            check.Currency,
            settings.Numbers ?? NumberStyle.CommaPoint,
            cash,
            check.Needed(settings.FillDay, DraftPlace.Of(Members.FillDay), IsoDayOfWeek.Friday),
            Holidays(settings.Holidays, check),
            settings.SetAsides ?? SetAsideMode.Level,
            BankCheck.Of(settings.Bank, DraftPlace.Of(Members.Bank), check),
            settings.CardRounding ?? CardRounding.Up,
            settings.SurplusOrder ?? DebtOrder.SmallestBalance,
            SlipLines(settings.SlipLines ?? [], check))
        {
            BufferKeeps = check.AmountOrNone(settings.BufferKeeps, DraftPlace.Of(Members.BufferKeeps)),
            Look = settings.Look ?? ScreenLook.Automatic,
            Overdraft = check.AmountOrNone(settings.Overdraft, DraftPlace.Of(Members.Overdraft)),
        };
    }

    private static CashPieces Cash(SettingsDraft settings, bool isKnown, DraftCheck check)
    {
        CashPieces usual = isKnown && CashDefaults.Codes.Contains(check.Currency.Code) ? CashDefaults.For(check.Currency) : new CashPieces([], []);
        ImmutableArray<Money> notes = usual.Notes;
        DraftPlace notesAt = DraftPlace.Of(Members.Notes);
        if (settings.Notes is { } given)
        {
            notes = PieceCheck.Notes(given, Members.Notes, DraftPlace.Whole, check);
        }
        else if (notes.IsEmpty && isKnown)
        {
            check.Refuse(new DraftFault.NotesUnknown(notesAt, check.Currency));
        }

        // A piece that the household calls a note is none of the coins that are usual.
        ImmutableArray<Money> coins = settings.Coins is { } pieces
            ? PieceCheck.Pieces(pieces, Members.Coins, DraftPlace.Whole, check)
            : [.. usual.Coins.Except(notes)];

        // Where the notes can't be told, nothing is checked against them.
        check.Notes = check.IsSound(notesAt) ? notes : [];
        return new CashPieces(check.Notes, coins);
    }

    private static HolidayRules Holidays(HolidayDraft? holidays, DraftCheck check)
    {
        DraftPlace place = DraftPlace.Of(Members.Holidays);
        return check.IsThere(holidays, place)
            ? new HolidayRules(
                check.Needed(holidays!.Set, place.Then(HolidayDraft.Members.Set), HolidaySet.None),
                check.Dates(holidays.Extra ?? [], HolidayDraft.Members.Extra, place))
            : HolidayRules.None;
    }

    private static ImmutableArray<string> SlipLines(ImmutableArray<string> lines, DraftCheck check)
    {
        check.NotTooMany(lines.Length, HouseholdLimits.MostSlipLines, DraftPlace.Of(Members.SlipLines));
        return [.. lines.Select((line, i) => check.Line(line, DraftPlace.Of(Members.SlipLines, i)))];
    }
}
