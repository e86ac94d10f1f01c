using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Store.Texts;

namespace Payday.Store.Json;

/// <summary>What is said of each fault of a file that a person wrote: what is wrong and how to mend it, one sentence.</summary>
public static class JsonTexts
{
    /// <summary>The sentence.</summary>
    public static string Of(Fault fault) => fault switch
    {
        JsonTextFault file => Of(file),
        DraftFault household => Of(household),
        AmountFault amount => AmountTexts.Of(amount),
        DateFault date => DateTexts.Of(date),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(JsonTextFault fault) => fault switch
    {
        JsonTextFault.Nothing => "There is nothing in the text.",
        JsonTextFault.TooLarge => "The text is larger than 50 MB; this can't be the right file.",
        JsonTextFault.NotUtf8 => "This is not a text in UTF-8; save the file as UTF-8 and try again.",
        JsonTextFault.EndsTooEarly => "The text ends too early; a bracket or a quote is not closed.",
        JsonTextFault.Broken broken => broken.Next switch
        {
            (byte)'/' => "JSON has no comments; remove this one.",
            (byte)'}' or (byte)']' => "There is a comma too many before this bracket, or it closes one of the other kind.",
            (byte)'\'' => "JSON has double quotes only; write \" here.",
            _ => "The JSON is broken here; look just before for a missing comma, quote or bracket.",
        },
        JsonTextFault.TooDeep deep => $"This is nested deeper than {deep.Most} levels; nothing here needs that.",
        JsonTextFault.HalfCharacter => "A \\u escape here spells half a character; write the character itself.",
        JsonTextFault.FieldTwice => "This field stands here twice; keep one of them.",
        JsonTextFault.More more => string.Create(CultureInfo.InvariantCulture, $"There may be more; only the first {more.Listed:N0} faults are listed."),
        JsonTextFault.OtherVersion other => $"This file has version {other.Version} and this program reads versions {other.Oldest} to {other.Newest}; use a newer program.",
        JsonTextFault.UnknownField unknown => $"This field is not known here; remove it, or write one of {string.Join(", ", unknown.Known)}.",
        JsonTextFault.Missing missing => $"This is missing; add {Of(missing.Wanted)}.",
        JsonTextFault.WrongKind wrong => $"{Of(wrong.There)} stands here; write {Of(wrong.Wanted)}.",
        JsonTextFault.Unquoted { Number: var number } => $"{SafeText.Shown(number)} stands here without quotes; write it as \"{SafeText.Shown(number)}\".",
        JsonTextFault.UnknownWord word => $"\"{SafeText.Shown(word.Text)}\" is not known here; write {Listed(word.Words)}.",
        JsonTextFault.NotACount count => DoesNotFit(count.Number, count.Least, count.Most),
        JsonTextFault.NotAFraction { Text: var text } => $"\"{SafeText.Shown(text)}\" is not a fraction; write 19.99 % as \"0.1999\".",
        JsonTextFault.NotADate { Text: var text } => $"\"{SafeText.Shown(text)}\" is not a date; write it like 2026-03-05.",
        JsonTextFault.DateTooFar { Text: var text } => $"{text} is too far off; dates go from {HouseholdLimits.FirstYear} to {HouseholdLimits.LastYear}.",
        JsonTextFault.NoSuchMonth { Text: var text } => $"{text} is not in the calendar: months go from 01 to 12, in the middle.",
        JsonTextFault.NoSuchDay day => $"{day.Text} is not in the calendar: {CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(day.Month)} {day.Year} has {day.Days} days.",
        JsonTextFault.NotAnAmount { Why: var why } => Of(why),
        JsonTextFault.CurrencyNamed named => named.Named == named.Currency.Code
            ? $"\"{SafeText.Shown(named.Text)}\" names the currency; write the number alone."
            : $"\"{SafeText.Shown(named.Text)}\" is in {named.Named} and the rest in {named.Currency.Code}, and two currencies can't mix; convert it and write the number alone.",
        JsonTextFault.HarmfulAmount amount => $"\"{SafeText.Shown(amount.Text)}\" is not an amount; write it like {Sample(amount.Currency)}.",
        JsonTextFault.NameTaken taken => $"\"{SafeText.Shown(taken.Name)}\" is already the name of {taken.Place}; give each its own.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(DraftFault fault) => fault switch
    {
        DraftFault.Missing => "This is missing.",
        DraftFault.TextEmpty => "This text is empty; write something.",
        DraftFault.TextTooLong text => $"This text has {text.Length} characters; shorten it to {text.Most}.",
        DraftFault.TextUnshowable text => $"This text holds a character that can't be shown (U+{text.Character:X4}); remove it.",
        DraftFault.NameUnseen name => $"This name holds a character that can't be seen (U+{name.Character:X4}); remove it.",
        DraftFault.NameReserved { Name: var name } => $"\"{SafeText.Shown(name)}\" is what Payday calls something else; choose another name.",
        DraftFault.NameTaken { Name: var name } => $"\"{SafeText.Shown(name)}\" is already the name of another one; give each its own.",
        DraftFault.IdMalformed { Id: var id } => $"\"{SafeText.Shown(id)}\" is not an id; write lower-case letters a to z, digits and single hyphens, or leave it out.",
        DraftFault.IdTaken { Id: var id } => $"\"{id}\" is already the id of another one in this list; give each its own, or leave it out.",
        DraftFault.AmountBelowZero => "This amount is below zero; write zero or more.",
        DraftFault.AmountZero => "This amount is zero; write one above zero.",
        DraftFault.AmountTooFine { Currency: { Decimals: 0 } currency } => $"{currency.Code} has no decimals; write it like 1234.",
        DraftFault.AmountTooFine { Currency: var currency } => $"{currency.Code} has at most {currency.Decimals} decimals; write it like 12.{new string('5', currency.Decimals)}.",
        DraftFault.AmountTooLarge => "The amount is too large; look at its digits.",
        DraftFault.CountOutside count => DoesNotFit(count.Count.ToString(CultureInfo.InvariantCulture), count.Least, count.Most),
        DraftFault.RateBelowZero { Rate: var rate } => Of(new JsonTextFault.NotAFraction(Plain(rate))),
        DraftFault.RateTooFine rate => $"\"{SafeText.Shown(Plain(rate.Rate))}\" has more than {rate.MostDecimals} decimals; round it.",
        DraftFault.RateTooHigh rate => $"\"{SafeText.Shown(Plain(rate.Rate))}\" is above {rate.Highest}, that is {rate.Highest}00 %; write 19.99 % as \"0.1999\".",
        DraftFault.DateTooFar { Date: var date } => Of(new JsonTextFault.DateTooFar(Plain(date))),
        DraftFault.DateBeforeStart date => $"{Plain(date.Date)} is before the household starts, {Plain(date.Start)}; write a later date.",
        DraftFault.ChangeNotAfter change => $"{Plain(change.Date)} is not after {Plain(change.Before)}, the date of the change before it; write them in the order of their dates, each date once.",
        DraftFault.DateTooLate date => $"{Plain(date.Date)} is more than {date.MostYears} years off; look for a mistyped year.",
        DraftFault.TooMany list => $"There are {list.Count} entries here; at most {list.Most} are taken.",
        DraftFault.NoNotes => "A list without notes is no use; write at least one, such as [\"20\"].",
        DraftFault.NotesUnknown { Currency: var currency } => $"The notes of {currency.Code} are not known here; add those in use, such as [\"20\", \"10\"].",
        DraftFault.PieceTwice { Piece: var piece } => $"{piece.ToPiece()} stands in this list twice; keep one of them.",
        DraftFault.NoteNotInUse note => note.InUse.IsEmpty
            ? $"There is no note of {note.Note.ToPiece()}; write one above zero."
            : $"There is no note of {note.Note.ToPiece()} in use; write one of {string.Join(", ", note.InUse.Select(one => one.ToPiece()))}.",
        DraftFault.NoteCountedTwice { Note: var note } => $"{note.ToPiece()} is counted here twice; keep one of them.",
        DraftFault.LimitTooLow { SmallestNote: var note } => $"The machine's smallest note is {note.ToPiece()}, so with this limit it gives nothing; raise it or leave it out.",
        DraftFault.NotTwoDays => "Two different days belong here, such as [15, \"last\"].",
        DraftFault.NoSource => "A household needs at least one income source; add who pays, and when.",
        DraftFault.RankTaken rank => $"Rank {rank.Rank} is already that of \"{SafeText.Shown(rank.By)}\"; give each pot its own, or leave it out.",
        DraftFault.WeeksOfAWeek => "An amount for each week always goes week by week; remove this, or write \"per\": \"payday\".",
        DraftFault.WeeksInAccount => "A pot in the account isn't divided over weeks; remove this, or write \"held\": \"cash\".",
        DraftFault.NotesInAccount => "A pot in the account takes no notes; remove this, or write \"held\": \"cash\".",
        DraftFault.LeftOverInAccount => "A pot in the account is not counted, so nothing is left over; remove this, or write \"held\": \"cash\".",
        DraftFault.LeftOverToItself => "What is left of a pot can't go to the pot itself; name another, or write \"stays\".",
        DraftFault.LeftOverUnknown left => $"\"{SafeText.Shown(left.Named)}\" is none of the {(left.IsDebt ? "debts" : "pots")}; write the name or id of one.",
        DraftFault.SmallTooMuch small => $"The pot never gets more than {small.Largest.ToPlain()} at once, so it can't have {small.AtLeast.ToPlain()} in small notes; lower \"atLeast\".",
        DraftFault.AccountTooLow low => $"The set-asides of bills and the pots in the account already have {low.Parts.ToPlain()}, but the account has {low.Account.ToPlain()}; raise \"account\" or lower a \"setAside\" or \"has\".",
        DraftFault.SameName same => $"Two {(same.AreDebts ? "debts" : "sources")} have this name; give each a name of its own.",
        DraftFault.NoPayday => "There is no payday here; write at least one.",
        DraftFault.PaydayNotAfter => "This payday is not after the one before it; write them in order, each date once.",
        DraftFault.TotalTooLarge { Largest: var largest } => $"The amounts add up to more than can be counted exactly; look for one with too many digits (the largest is {largest.ToPlain()}).",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(JsonWanted wanted) => wanted switch
    {
        JsonWanted.Object => "an object in { }",
        JsonWanted.List => "a list in [ ]",
        JsonWanted.Text => "a text in quotes",
        JsonWanted.Amount { Currency: var currency } => $"an amount in quotes, such as \"{Money.FromUnits(45, currency).ToPlain()}\"",
        JsonWanted.Fraction => "a fraction in quotes, such as \"0.1999\" for 19.99 %",
        JsonWanted.Date => "a date such as \"2026-03-05\"",
        JsonWanted.Flag => "true or false, without quotes",
        JsonWanted.Count count => WholeNumber(count.Least, count.Most),
        JsonWanted.Word { Words: var words } => Listed(words),
        _ => throw new ArgumentOutOfRangeException(nameof(wanted)),
    };

    private static string Of(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "An object",
        JsonValueKind.Array => "A list",
        JsonValueKind.String => "A text",
        JsonValueKind.Number => "A number",
        JsonValueKind.True => "True",
        JsonValueKind.False => "False",
        _ => "Null",
    };

    private static string WholeNumber(int least, int most) =>
        string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}, without quotes");

    private static string DoesNotFit(string number, int least, int most) => $"{SafeText.Shown(number)} doesn't fit here; write {WholeNumber(least, most)}.";

    private static string Sample(Currency currency) => Money.FromUnits(45, currency).ToPlain();

    private static string Plain(decimal fraction) => fraction.ToString(CultureInfo.InvariantCulture);

    private static string Plain(LocalDate date) => date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);

    private static string Listed(ImmutableArray<string> words)
    {
        var list = new StringBuilder();
        for (int i = 0; i < words.Length; i++)
        {
            list.Append(i == 0 ? "" : i == words.Length - 1 ? " or " : ", ").Append('"').Append(words[i]).Append('"');
        }

        return list.ToString();
    }
}
