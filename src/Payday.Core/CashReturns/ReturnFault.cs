using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.CashReturns;

/// <summary>Why cash can't be returned so.</summary>
/// <remarks>Pots are named as the person calls them.</remarks>
public abstract record ReturnFault : Fault
{
    /// <summary>No pot owes any cash.</summary>
    public sealed record NothingOwed : ReturnFault;

    /// <summary>All that is owed is left out this time.</summary>
    public sealed record NothingGoes : ReturnFault;

    /// <summary>The notes picked for a pot are not worth what it owes.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="Notes">What they are worth.</param>
    /// <param name="Owes">What it owes.</param>
    public sealed record NotesDiffer(string Pot, Money Notes, Money Owes) : ReturnFault;

    /// <summary>The pot did not owe all of it yet on that day.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="Date">The day.</param>
    public sealed record NotOwedYet(string Pot, LocalDate Date) : ReturnFault;
}
