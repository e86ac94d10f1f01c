using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Ledgers;

namespace Payday.Core.AccountEntries;

/// <summary>Why money that came in or went out can't be entered so.</summary>
/// <remarks>Pots, bills and debts are named as the person calls them.</remarks>
public abstract record EntryFault : Fault
{
    /// <summary>The amount is zero.</summary>
    public sealed record Zero : EntryFault;

    /// <summary>The day is before the household began.</summary>
    /// <param name="Date">The day.</param>
    /// <param name="Start">When it began.</param>
    public sealed record BeforeStart(LocalDate Date, LocalDate Start) : EntryFault;

    /// <summary>Money of that kind never comes in, or never goes out.</summary>
    /// <param name="Kind">The kind.</param>
    /// <param name="ComesIn">Whether it was to come in.</param>
    public sealed record WrongWay(EntryKind Kind, bool ComesIn) : EntryFault;

    /// <summary>Money of that kind is not for that.</summary>
    /// <param name="Kind">The kind.</param>
    /// <param name="For">What it was to be for.</param>
    /// <param name="Name">What the person calls it; null where it is no pot, bill or debt.</param>
    public sealed record NotFor(EntryKind Kind, LedgerEnd For, string? Name) : EntryFault;

    /// <summary>What is bought for a cash pot is a card purchase, or found by its count.</summary>
    /// <param name="Pot">The pot.</param>
    public sealed record IsPurchase(string Pot) : EntryFault;

    /// <summary>There is less than the amount.</summary>
    /// <param name="From">Where.</param>
    /// <param name="Name">What the person calls the pot or bill; null for the buffer, what is left to place, and the loose notes.</param>
    /// <param name="Has">What it has.</param>
    /// <param name="Amount">The amount.</param>
    public sealed record HasLess(LedgerEnd From, string? Name, Money Has, Money Amount) : EntryFault;

    /// <summary>The notes are not worth the amount.</summary>
    /// <param name="Notes">What they are worth.</param>
    /// <param name="Amount">The amount, above zero.</param>
    public sealed record NotesDiffer(Money Notes, Money Amount) : EntryFault;

    /// <summary>Notes are named for money of the account.</summary>
    public sealed record NoNotes : EntryFault;

    /// <summary>Notes that come to the loose ones have to be named.</summary>
    public sealed record NotesNeeded : EntryFault;

    /// <summary>Those notes are not among the loose ones.</summary>
    public sealed record NotesNotThere : EntryFault;

    /// <summary>The loose notes can't make the amount.</summary>
    /// <param name="Amount">The amount, above zero.</param>
    public sealed record NotInNotes(Money Amount) : EntryFault;

    /// <summary>A cheque is money that goes out of the account.</summary>
    public sealed record NoCheque : EntryFault;

    /// <summary>What it was has to be said: a loss or an income of no source goes by it.</summary>
    /// <param name="Kind">The kind.</param>
    public sealed record NameNeeded(EntryKind Kind) : EntryFault;

    /// <summary>The loose notes are as they are known already.</summary>
    public sealed record CountedTheSame : EntryFault;
}
