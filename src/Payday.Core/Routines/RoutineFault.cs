using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.Routines;

/// <summary>Why a payday can't be worked on, or a decision of it can't be taken.</summary>
public abstract record RoutineFault : Fault
{
    /// <summary>No payday is known from a date on.</summary>
    /// <param name="From">The date.</param>
    public sealed record NoPaydayFrom(LocalDate From) : RoutineFault;

    /// <summary>No payday is known after this one, so that its pay period has no end.</summary>
    /// <param name="Payday">This one.</param>
    public sealed record NoPaydayAfter(LocalDate Payday) : RoutineFault;

    /// <summary>A payday is closed, and it or a later one is the last.</summary>
    /// <param name="Last">The last closed payday.</param>
    public sealed record Closed(LocalDate Last) : RoutineFault;

    /// <summary>The household starts after the date.</summary>
    /// <param name="Start">When it starts.</param>
    /// <param name="Date">The date.</param>
    public sealed record BeforeStart(LocalDate Start, LocalDate Date) : RoutineFault;

    /// <summary>The date is no payday.</summary>
    /// <param name="Date">The date.</param>
    /// <param name="Next">The first payday that is not closed, or null where none is known.</param>
    /// <param name="After">The first payday after the date, or null where none is known or it is the same.</param>
    public sealed record NotAPayday(LocalDate Date, LocalDate? Next, LocalDate? After) : RoutineFault;

    /// <summary>More is to be placed on one target than the surplus.</summary>
    /// <param name="Surplus">The surplus, zero or more.</param>
    public sealed record MoreThanSurplus(Money Surplus) : RoutineFault;

    /// <summary>More is to be paid on a debt than is owed on it.</summary>
    /// <param name="Most">What is owed, zero or more.</param>
    public sealed record MoreThanOwed(Money Most) : RoutineFault;

    /// <summary>The notes for a pot are more than it has.</summary>
    /// <param name="Pot">What the person calls it.</param>
    /// <param name="Has">What it has for this payday.</param>
    /// <param name="Notes">What its notes would come to.</param>
    public sealed record NotesAbovePot(string Pot, Money Has, Money Notes) : RoutineFault;
}
