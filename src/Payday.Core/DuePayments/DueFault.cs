using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.DuePayments;

/// <summary>Why a due can't be ticked.</summary>
/// <remarks>Bills and debts are named as the person calls them.</remarks>
public abstract record DueFault : Fault
{
    /// <summary>Nothing of that date waits: it is paid, waived, or not known.</summary>
    /// <param name="Name">The bill or debt, or what was given for its name.</param>
    /// <param name="Due">The date of the due.</param>
    public sealed record NotOpen(string Name, LocalDate Due) : DueFault;

    /// <summary>The day is still to come.</summary>
    /// <param name="Date">The day.</param>
    public sealed record StillToCome(LocalDate Date) : DueFault;

    /// <summary>The day is before the household began.</summary>
    /// <param name="Date">The day.</param>
    /// <param name="Start">When it began.</param>
    public sealed record BeforeStart(LocalDate Date, LocalDate Start) : DueFault;

    /// <summary>The amount is below zero, or zero and nothing is freed.</summary>
    public sealed record NotAboveZero : DueFault;

    /// <summary>There is less than that for it, with the buffer too.</summary>
    /// <param name="Name">The bill or debt.</param>
    /// <param name="Amount">What was paid.</param>
    /// <param name="Held">What the account holds for it, for later dues too.</param>
    /// <param name="Buffer">What the account's buffer has.</param>
    public sealed record NotEnough(string Name, Money Amount, Money Held, Money Buffer) : DueFault;

    /// <summary>It is more than is owed on the debt.</summary>
    /// <param name="Name">The debt.</param>
    /// <param name="Owed">What is owed, with the interest of the due.</param>
    public sealed record MoreThanOwed(string Name, Money Owed) : DueFault;
}
