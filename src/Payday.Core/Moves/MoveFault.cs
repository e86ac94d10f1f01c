using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Ledgers;

namespace Payday.Core.Moves;

/// <summary>Why money can't be moved so.</summary>
public abstract record MoveFault : Fault
{
    /// <summary>The amount is zero or below it.</summary>
    public sealed record NotAboveZero : MoveFault;

    /// <summary>Both ends are the same.</summary>
    public sealed record SameEnd : MoveFault;

    /// <summary>The day is before the household began.</summary>
    /// <param name="Date">The day.</param>
    /// <param name="Start">When it began.</param>
    public sealed record BeforeStart(LocalDate Date, LocalDate Start) : MoveFault;

    /// <summary>Money can't be taken from there, or the household has it no more.</summary>
    /// <param name="End">The end.</param>
    public sealed record NotFrom(LedgerEnd End) : MoveFault;

    /// <summary>Money can't be moved there, or the household has it no more.</summary>
    /// <param name="End">The end.</param>
    public sealed record NotTo(LedgerEnd End) : MoveFault;

    /// <summary>There is less than the amount.</summary>
    /// <param name="From">Where.</param>
    /// <param name="Name">What the person calls the pot or bill; null for the buffer and the loose notes.</param>
    /// <param name="Has">What it has.</param>
    /// <param name="Amount">The amount.</param>
    public sealed record HasLess(LedgerEnd From, string? Name, Money Has, Money Amount) : MoveFault;

    /// <summary>An account with an overdraft can't give so much cash.</summary>
    /// <param name="Has">What it can give, zero or more; see <see cref="Books.CashRoom"/>.</param>
    /// <param name="Amount">The amount.</param>
    public sealed record AccountHasLess(Money Has, Money Amount) : MoveFault;

    /// <summary>Less is owed on the debt than the amount.</summary>
    /// <param name="Debt">What the person calls it.</param>
    /// <param name="Owed">What is owed, zero or more.</param>
    /// <param name="Amount">The amount.</param>
    public sealed record OwesLess(string Debt, Money Owed, Money Amount) : MoveFault;

    /// <summary>The notes are not worth the amount.</summary>
    /// <param name="Notes">What they are worth.</param>
    /// <param name="Amount">The amount.</param>
    public sealed record NotesDiffer(Money Notes, Money Amount) : MoveFault;

    /// <summary>Notes are named, and none change hands: the money stays in the account, or waits to be taken there.</summary>
    public sealed record NoNotesMove : MoveFault;

    /// <summary>Those notes are not there.</summary>
    /// <param name="From">Where they would come from.</param>
    /// <param name="Name">What the person calls the pot; null for the loose notes.</param>
    public sealed record NotesNotThere(LedgerEnd From, string? Name) : MoveFault;

    /// <summary>The loose notes can't make the amount.</summary>
    /// <param name="Amount">The amount.</param>
    public sealed record NotInNotes(Money Amount) : MoveFault;

    /// <summary>Which notes are fetched has to be said, as they become loose notes.</summary>
    public sealed record NotesNeeded : MoveFault;
}
