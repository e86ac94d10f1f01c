using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Statements.Taking;

/// <summary>Why nothing can be proposed for statements.</summary>
public abstract record PlanFault : Fault
{
    /// <summary>The files are of several accounts, or of none of that number.</summary>
    /// <param name="Accounts">The numbers of those there.</param>
    public sealed record WhichAccount(ImmutableArray<string> Accounts) : PlanFault;

    /// <summary>The file is of another account than those that were taken.</summary>
    /// <param name="Account">The one it is of.</param>
    /// <param name="Known">The one that was taken.</param>
    public sealed record OtherAccount(string Account, string Known) : PlanFault;

    /// <summary>The statement is of a card: what is owed on it is a debt of its own.</summary>
    /// <param name="Account">Its number.</param>
    public sealed record OfACard(string Account) : PlanFault;

    /// <summary>The statement is in another currency than the household.</summary>
    /// <param name="Found">The statement's.</param>
    /// <param name="Household">The household's.</param>
    public sealed record OtherCurrency(Currency Found, Currency Household) : PlanFault;

    /// <summary>Nothing says of which days it is.</summary>
    public sealed record NoDays : PlanFault;

    /// <summary>The lines of a statement don't lead from its opening balance to its closing one, so some may be missing or wrong.</summary>
    /// <param name="To">Its last day.</param>
    /// <param name="Expected">What they lead to.</param>
    /// <param name="Closing">Its closing balance.</param>
    public sealed record DoesNotAddUp(LocalDate To, Money Expected, Money Closing) : PlanFault;

    /// <summary>The running balance of a statement breaks.</summary>
    /// <param name="To">Its last day.</param>
    /// <param name="Line">The line of the file before which something is missing.</param>
    /// <param name="Missing">How much.</param>
    public sealed record Breaks(LocalDate To, int Line, Money Missing) : PlanFault;

    /// <summary>A statement ends after today.</summary>
    /// <param name="To">Its last day.</param>
    public sealed record StillToCome(LocalDate To) : PlanFault;
}
