using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Store.Json;
using Settings = Payday.Core.Drafts.SettingsDraft.Members;

namespace Payday.Texts;

/// <summary>What is said of each fault of a form to a person who sees fields and no file: what is wrong and how to mend it, one sentence.</summary>
internal static class FormTexts
{
    // A fraction has so many decimals, and a hundredth takes two of them.
    private const int PercentDecimals = HouseholdLimits.RateDecimals - 2;

    /// <summary>The sentence.</summary>
    /// <param name="fault">What is wrong.</param>
    /// <param name="style">How the household writes numbers.</param>
    public static string Of(Fault fault, NumberStyle style) => fault switch
    {
        DraftFault draft => Of(draft, style),
        TypedFault typed => Of(typed, style),
        _ => FaultTexts.Of(fault, style),
    };

    /// <summary>The sentence after what it is about, where that isn't what was just typed.</summary>
    public static string Named(Fault fault, HouseholdDraft draft, NumberStyle style)
    {
        string sentence = Of(fault, style);
        return fault is DraftFault { Place.Steps: [var first, ..] } and not (DraftFault.NameTaken or DraftFault.NameReserved) && About(first, draft) is { } about
            ? $"{about}: {sentence}"
            : sentence;
    }

    private static string? About(DraftStep first, HouseholdDraft draft)
    {
        if (first.Member == HouseholdDraft.Members.Opening)
        {
            return "Opening balances";
        }

        ItemDraft? item = first.Item is not { } index ? null
            : first.Member == HouseholdDraft.Members.Sources ? draft.Sources?[index]
            : first.Member == HouseholdDraft.Members.Bills ? draft.Bills?[index]
            : first.Member == HouseholdDraft.Members.Debts ? draft.Debts?[index]
            : first.Member == HouseholdDraft.Members.Pots ? draft.Pots?[index]
            : null;
        return item is null ? null
            : SafeText.Shown(item.Name ?? string.Create(CultureInfo.InvariantCulture, $"Number {first.Item + 1}"));
    }

    private static string Of(DraftFault fault, NumberStyle style) => fault switch
    {
        DraftFault.Missing => "This is still to fill in.",
        DraftFault.TextEmpty => "Nothing stands here; write something.",
        DraftFault.TextTooLong text => $"That has {text.Length} characters; shorten it to {text.Most}.",
        DraftFault.TextUnshowable text => $"There is a character in it that can't be shown (U+{text.Character:X4}); remove it.",
        DraftFault.NameUnseen name => $"This name holds a character that can't be seen (U+{name.Character:X4}); remove it.",
        DraftFault.NameReserved { Name: var name } => $"\"{SafeText.Shown(name)}\" is what Payday calls something else; choose another name.",
        DraftFault.NameTaken { Name: var name } => $"\"{SafeText.Shown(name)}\" is already the name of another one; give each its own.",
        DraftFault.IdMalformed { Id: var id } => $"\"{SafeText.Shown(id)}\" is not an id; write lower-case letters a to z, digits and single hyphens.",
        DraftFault.IdTaken { Id: var id } => $"\"{SafeText.Shown(id)}\" is already the id of another one in this list; give each its own.",
        DraftFault.AmountBelowZero { Place: var place } below when IsOfPieces(place) => $"{style.Written(below.Amount.ToString(CultureInfo.InvariantCulture))} is no value of a note or coin; write one above zero.",
        DraftFault.AmountZero { Place: var place } when IsOfPieces(place) => "0 is no value of a note or coin; write one above zero.",
        DraftFault.AmountBelowZero => "An amount below zero has no place here.",
        DraftFault.AmountZero => "Zero has no place here; write an amount above it.",
        DraftFault.AmountTooFine { Currency: { Decimals: 0 } currency } => $"{currency.Code} has no decimals; write it like 1234.",
        DraftFault.AmountTooFine { Currency: var currency } => $"{currency.Code} has at most {currency.Decimals} decimals; write it like 12{style.DecimalMark}{new string('5', currency.Decimals)}.",
        DraftFault.AmountTooLarge => "The amount is too large; look at its digits.",
        DraftFault.CountOutside count => DoesNotFit(count.Count.ToString(CultureInfo.InvariantCulture), count.Least, count.Most),
        DraftFault.RateBelowZero => "A percentage below zero has no place here.",
        DraftFault.RateTooFine => $"A percentage has at most {PercentDecimals} decimals here; round it.",
        DraftFault.RateTooHigh rate => $"That is above {rate.Highest}00 %; write 19{style.DecimalMark}99 for 19{style.DecimalMark}99 %.",
        DraftFault.DateTooFar { Date: var date } => $"{Plain(date)} is too far off; dates go from {HouseholdLimits.FirstYear} to {HouseholdLimits.LastYear}.",
        DraftFault.DateBeforeStart date => $"{Plain(date.Date)} is before the household starts, {Plain(date.Start)}; write a later date.",
        DraftFault.ChangeNotAfter change => $"{Plain(change.Date)} is not after {Plain(change.Before)}; write the changes in the order of their dates, each date once.",
        DraftFault.DateTooLate date => $"{Plain(date.Date)} is more than {date.MostYears} years off; look for a mistyped year.",
        DraftFault.TooMany { Place: var place } list =>
            IsOfPieces(place) ? Pieces
            : place.Steps is [{ Member: var member }] && member == Settings.SlipLines ? $"There are {list.Count} lines; at most {list.Most} are taken."
            : place.Steps is [.., { Member: var dates }] && (dates == HolidayDraft.Members.Extra || dates == ScheduleDraft.Members.Dates) ? Dates
            : $"There are {list.Count} here; at most {list.Most} are taken.",
        DraftFault.NoNotes => Pieces,
        DraftFault.NotesUnknown { Currency: var currency } => $"The notes of {currency.Code} are not known here; write those in use, such as 20 10.",
        DraftFault.PieceTwice { Piece: var piece } => $"{Piece(piece, style)} stands there twice; write it once.",
        DraftFault.NoteNotInUse note => note.InUse.IsEmpty
            ? $"There is no note of {Piece(note.Note, style)}; write one above zero."
            : $"There is no note of {Piece(note.Note, style)} in use; write one of {string.Join(", ", note.InUse.Select(one => Piece(one, style)))}.",
        DraftFault.NoteCountedTwice { Note: var note } => $"{Piece(note, style)} is counted here twice; keep one of them.",
        DraftFault.LimitTooLow { SmallestNote: var note } => $"The machine's smallest note is {Piece(note, style)}, so with this limit it gives nothing; raise it or leave it out.",
        DraftFault.NotTwoDays => "The two days must differ, such as 15 and last.",
        DraftFault.NoSource => "A household needs at least one income source; add who pays, and when.",
        DraftFault.RankTaken rank => $"Rank {rank.Rank} is already that of \"{SafeText.Shown(rank.By)}\"; give each pot its own.",
        DraftFault.WeeksOfAWeek => "An amount for each week always goes week by week.",
        DraftFault.WeeksInAccount => "A pot in the account isn't divided over weeks; clear this, or make it a pot in cash.",
        DraftFault.NotesInAccount => "A pot in the account takes no notes; clear this, or make it a pot in cash.",
        DraftFault.LeftOverInAccount => "A pot in the account is not counted, so nothing is left over; clear this, or make it a pot in cash.",
        DraftFault.LeftOverToItself => "What is left of a pot can't go to the pot itself; choose another.",
        DraftFault.LeftOverUnknown left => $"\"{SafeText.Shown(left.Named)}\" is none of the {(left.IsDebt ? "debts" : "pots")}, and what is left over goes there; choose another for it first.",
        DraftFault.SmallTooMuch small => $"The pot never gets more than {small.Largest.ToString(style)} at once, so it can't have {small.AtLeast.ToString(style)} in small notes; lower the small money.",
        DraftFault.AccountTooLow low => $"The set-asides of bills and the pots in the account already have {low.Parts.ToString(style)}, but the account has {low.Account.ToString(style)}; raise what is in the account, or lower what a bill or pot has of it.",
        DraftFault.SameName same => $"Two {(same.AreDebts ? "debts" : "sources")} have this name; give each a name of its own.",
        DraftFault.NoPayday => "There is no payday here; write at least one.",
        DraftFault.PaydayNotAfter => "This payday is not after the one before it.",
        DraftFault.TotalTooLarge { Largest: var largest } => $"The amounts add up to more than can be counted exactly; look for one with too many digits (the largest is {largest.ToString(style)}).",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(TypedFault fault, NumberStyle style) => fault switch
    {
        TypedFault.NotACount count => DoesNotFit(SafeText.Shown(count.Typed), count.Least, count.Most),
        TypedFault.NotADay { Typed: var typed } => $"'{SafeText.Shown(typed)}' is no day of a month; write 1 to 31, last, first or last working day, 2nd or last Friday.",
        TypedFault.NotAPercentage { Typed: var typed } => $"'{SafeText.Shown(typed)}' is not a percentage; write 19{style.DecimalMark}99 for 19{style.DecimalMark}99 %.",
        TypedFault.NotACode { Typed: var typed } => $"'{SafeText.Shown(typed)}' is no code known here; write USD, EUR, GBP or another of ISO 4217's.",
        TypedFault.NotAChoice choice => $"'{SafeText.Shown(choice.Typed)}' is none of {string.Join(" / ", choice.Choices)}.",
        TypedFault.NotADate date => $"'{SafeText.Shown(date.Typed)}': {Of(date.Why, style)}",
        TypedFault.NotAChange { Typed: var typed } => $"'{SafeText.Shown(typed)}' is no change of an amount; write it like 1480 from 1 Jan 2027, several with commas between them.",
        TypedFault.NoDates => Dates,
        TypedFault.NoPieces => Pieces,
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Pieces { get; } = $"Write 1 to {HouseholdLimits.MostPieces} values with blanks between them, such as 50 20 10 5.";

    private static string Dates { get; } = $"Write 1 to {HouseholdLimits.MostDates} dates like 2026-03-05, with blanks between them, or like 5 Mar 2026, with commas.";

    private static bool IsOfPieces(DraftPlace place) => place.Steps.Any(step =>
        step.Member == Settings.Notes || step.Member == Settings.Coins || step.Member == BankDraft.Members.Notes);

    private static string DoesNotFit(string number, int least, int most) =>
        string.Create(CultureInfo.InvariantCulture, $"'{number}' doesn't fit; write a whole number from {least} to {most}.");

    private static string Piece(Money piece, NumberStyle style) => style.Written(piece.ToPiece());

    private static string Plain(LocalDate date) => date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
}
