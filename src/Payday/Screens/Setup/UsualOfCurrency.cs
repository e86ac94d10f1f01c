using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Drafts;

namespace Payday.Screens.Setup;

/// <summary>What is usual for a currency, where a household is set up.</summary>
internal static class UsualOfCurrency
{
    /// <summary>
    /// Puts notes, coins and closed days of the currency: those of the one before would be wrong. Where no notes are
    /// known they have to be typed in.
    /// </summary>
    public static HouseholdDraft Put(HouseholdDraft draft)
    {
        Currency currency = draft.Settings.Currency ?? default;
        CashPieces? pieces = CashDefaults.Codes.Contains(currency.Code) ? CashDefaults.For(currency) : null;
        SettingsDraft settings = draft.Settings;
        return draft with
        {
            Settings = settings with
            {
                Notes = Values(pieces?.Notes),
                Coins = Values(pieces?.Coins),
                Bank = settings.Bank is { } bank ? bank with { Notes = null } : null,
                Holidays = (settings.Holidays ?? new()) with { Set = HolidayDefaults.For(currency) },
            },
            Opening = draft.Opening is { } opening ? opening with { LooseNotes = null } : null,
        };
    }

    /// <summary>The smallest note: of those the household uses, else of those usual for a currency, else one whole unit.</summary>
    public static decimal SmallestNote(HouseholdDraft draft, Currency currency) =>
        draft.Settings.Notes is [_, ..] notes ? notes.Min()
        : CashDefaults.Codes.Contains(currency.Code) ? CashDefaults.For(currency).Notes.Min(note => note.ToDecimal())
        : 1;

    private static ImmutableArray<decimal>? Values(ImmutableArray<Money>? pieces) =>
        pieces is { } there ? [.. there.Select(piece => piece.ToDecimal())] : null;
}
