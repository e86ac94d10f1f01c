using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;

namespace Payday.Core.StatementTaking;

/// <summary>Why statements can't be taken so.</summary>
public abstract record TakingFault : Fault
{
    /// <summary>There is nothing in them that isn't known, and nothing to be done.</summary>
    /// <param name="Left">How many of their lines were left before, and are left again.</param>
    public sealed record AllKnown(int Left) : TakingFault;

    /// <summary>Neither the file nor the person says the bank's balance on the last day.</summary>
    /// <param name="To">The last day.</param>
    public sealed record NoBalance(LocalDate To) : TakingFault;

    /// <summary>The last day is before the household's first.</summary>
    /// <param name="To">The last day.</param>
    /// <param name="Start">The household's first.</param>
    public sealed record BeforeStart(LocalDate To, LocalDate Start) : TakingFault;

    /// <summary>A line can't be taken so.</summary>
    /// <param name="Line">The line.</param>
    /// <param name="Why">What it says.</param>
    public sealed record AtLine(TakenLine Line, Fault Why) : TakingFault;

    /// <summary>There is no account line of that number that no line of a statement is yet.</summary>
    /// <param name="Number">The number.</param>
    public sealed record NoSuchLine(long Number) : TakingFault;

    /// <summary>The account lines that a line was to be come to something else.</summary>
    /// <param name="Here">What they come to.</param>
    /// <param name="Bank">What the bank shows.</param>
    public sealed record OtherAmount(Money Here, Money Bank) : TakingFault;

    /// <summary>A line was to be something that money of its way can't be.</summary>
    /// <param name="Target">What it was to be.</param>
    /// <param name="ComesIn">Whether the money came in.</param>
    public sealed record NotThat(LineTarget Target, bool ComesIn) : TakingFault;

    /// <summary>What a line was to be for isn't the household's, or not any more.</summary>
    /// <param name="Target">What it was to be.</param>
    public sealed record Gone(LineTarget Target) : TakingFault;

    /// <summary>There is no rule of those words.</summary>
    /// <param name="Words">The words.</param>
    public sealed record NoSuchRule(string Words) : TakingFault;
}
