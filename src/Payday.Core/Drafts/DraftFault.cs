using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.Drafts;

/// <summary>One thing that is wrong with a draft. One of the nested cases.</summary>
/// <param name="Place">Where.</param>
public abstract record DraftFault(DraftPlace Place) : Fault
{
    /// <summary>It is missing.</summary>
    public sealed record Missing(DraftPlace Place) : DraftFault(Place);

    /// <summary>A text with nothing in it.</summary>
    public sealed record TextEmpty(DraftPlace Place) : DraftFault(Place);

    /// <summary>A text with too many characters.</summary>
    public sealed record TextTooLong(DraftPlace Place, int Length, int Most) : DraftFault(Place);

    /// <summary>A text with a character that drives a terminal, or changes what is seen.</summary>
    /// <param name="Place">Where.</param>
    /// <param name="Character">Its code point.</param>
    public sealed record TextUnshowable(DraftPlace Place, int Character) : DraftFault(Place);

    /// <summary>A name with a character that can't be seen.</summary>
    /// <param name="Place">Where.</param>
    /// <param name="Character">Its code point.</param>
    public sealed record NameUnseen(DraftPlace Place, int Character) : DraftFault(Place);

    /// <summary>A name that Payday gives to something else.</summary>
    public sealed record NameReserved(DraftPlace Place, string Name) : DraftFault(Place);

    /// <summary>A name that another item of the list has.</summary>
    /// <param name="Place">Where.</param>
    /// <param name="Name">The name.</param>
    /// <param name="Other">The item that has it.</param>
    public sealed record NameTaken(DraftPlace Place, string Name, DraftPlace Other) : DraftFault(Place);

    /// <summary>An id with other characters than an id has.</summary>
    public sealed record IdMalformed(DraftPlace Place, string Id) : DraftFault(Place);

    /// <summary>An id that another item of the list has.</summary>
    public sealed record IdTaken(DraftPlace Place, string Id) : DraftFault(Place);

    /// <summary>An amount below zero.</summary>
    public sealed record AmountBelowZero(DraftPlace Place, decimal Amount) : DraftFault(Place);

    /// <summary>An amount of zero where only one above it has a meaning.</summary>
    public sealed record AmountZero(DraftPlace Place) : DraftFault(Place);

    /// <summary>An amount with more decimals than its currency.</summary>
    public sealed record AmountTooFine(DraftPlace Place, Currency Currency) : DraftFault(Place);

    /// <summary>An amount that 64 bits don't hold.</summary>
    public sealed record AmountTooLarge(DraftPlace Place) : DraftFault(Place);

    /// <summary>A whole number that is too small or too large.</summary>
    public sealed record CountOutside(DraftPlace Place, int Count, int Least, int Most) : DraftFault(Place);

    /// <summary>A rate below zero.</summary>
    public sealed record RateBelowZero(DraftPlace Place, decimal Rate) : DraftFault(Place);

    /// <summary>A rate with too many decimals.</summary>
    public sealed record RateTooFine(DraftPlace Place, decimal Rate, int MostDecimals) : DraftFault(Place);

    /// <summary>A rate that is too high.</summary>
    public sealed record RateTooHigh(DraftPlace Place, decimal Rate, int Highest) : DraftFault(Place);

    /// <summary>A date of a year that is no date's here.</summary>
    public sealed record DateTooFar(DraftPlace Place, LocalDate Date) : DraftFault(Place);

    /// <summary>A date before the household starts.</summary>
    public sealed record DateBeforeStart(DraftPlace Place, LocalDate Date, LocalDate Start) : DraftFault(Place);

    /// <summary>A date so long after the start that it must be mistyped.</summary>
    public sealed record DateTooLate(DraftPlace Place, LocalDate Date, int MostYears) : DraftFault(Place);

    /// <summary>A change of an amount whose date isn't after that of the change before it.</summary>
    /// <param name="Place">Where.</param>
    /// <param name="Date">Its date.</param>
    /// <param name="Before">The date of the one before.</param>
    public sealed record ChangeNotAfter(DraftPlace Place, LocalDate Date, LocalDate Before) : DraftFault(Place);

    /// <summary>A list with too many items.</summary>
    public sealed record TooMany(DraftPlace Place, int Count, int Most) : DraftFault(Place);

    /// <summary>A list of notes without any.</summary>
    public sealed record NoNotes(DraftPlace Place) : DraftFault(Place);

    /// <summary>Notes left out of a currency whose usual ones aren't known.</summary>
    public sealed record NotesUnknown(DraftPlace Place, Currency Currency) : DraftFault(Place);

    /// <summary>A value that stands in a list of notes or coins twice.</summary>
    public sealed record PieceTwice(DraftPlace Place, Money Piece) : DraftFault(Place);

    /// <summary>A note that isn't in use.</summary>
    /// <param name="Place">Where.</param>
    /// <param name="Note">The note.</param>
    /// <param name="InUse">Those in use; empty where they aren't known.</param>
    public sealed record NoteNotInUse(DraftPlace Place, Money Note, ImmutableArray<Money> InUse) : DraftFault(Place);

    /// <summary>A note that is counted twice.</summary>
    public sealed record NoteCountedTwice(DraftPlace Place, Money Note) : DraftFault(Place);

    /// <summary>A machine's limit below its smallest note.</summary>
    public sealed record LimitTooLow(DraftPlace Place, Money SmallestNote) : DraftFault(Place);

    /// <summary>Two days of a month that are the same, or not both there.</summary>
    public sealed record NotTwoDays(DraftPlace Place) : DraftFault(Place);

    /// <summary>A household that nobody pays.</summary>
    public sealed record NoSource(DraftPlace Place) : DraftFault(Place);

    /// <summary>A rank that another pot has.</summary>
    public sealed record RankTaken(DraftPlace Place, int Rank, string By) : DraftFault(Place);

    /// <summary>An amount for each week, said to be filled at once.</summary>
    public sealed record WeeksOfAWeek(DraftPlace Place) : DraftFault(Place);

    /// <summary>A pot in the account that is to be divided over weeks.</summary>
    public sealed record WeeksInAccount(DraftPlace Place) : DraftFault(Place);

    /// <summary>A pot in the account that wants notes.</summary>
    public sealed record NotesInAccount(DraftPlace Place) : DraftFault(Place);

    /// <summary>A pot in the account, of which nothing is counted, that has something left over.</summary>
    public sealed record LeftOverInAccount(DraftPlace Place) : DraftFault(Place);

    /// <summary>A pot that moves on to itself.</summary>
    public sealed record LeftOverToItself(DraftPlace Place) : DraftFault(Place);

    /// <summary>A pot or debt that isn't there.</summary>
    public sealed record LeftOverUnknown(DraftPlace Place, string Named, bool IsDebt) : DraftFault(Place);

    /// <summary>More small money than the pot ever gets.</summary>
    public sealed record SmallTooMuch(DraftPlace Place, Money Largest, Money AtLeast) : DraftFault(Place);

    /// <summary>Bills and pots that have more at the start than the account.</summary>
    public sealed record AccountTooLow(DraftPlace Place, Money Parts, Money Account) : DraftFault(Place);

    /// <summary>Amounts that add up to more than can be counted.</summary>
    public sealed record TotalTooLarge(DraftPlace Place, Money Largest) : DraftFault(Place);

    /// <summary>A debt or source that is told from others by its name alone, and has that of another.</summary>
    public sealed record SameName(DraftPlace Place, bool AreDebts) : DraftFault(Place);

    /// <summary>No payday to plan with.</summary>
    public sealed record NoPayday(DraftPlace Place) : DraftFault(Place);

    /// <summary>A payday that isn't after the one before it.</summary>
    public sealed record PaydayNotAfter(DraftPlace Place) : DraftFault(Place);
}
