using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.BankLines;

namespace Payday.Core.Reconciling;

/// <summary>What a difference between the bank and the account here may come from; one of the nested cases.</summary>
/// <remarks>Each is common practice of the trade (no source): a pointer to where to look, never a proof.</remarks>
public abstract record Culprit
{
    private Culprit()
    {
    }

    /// <summary>The line is not ticked, and its amount is the difference: the bank may show it.</summary>
    /// <param name="Line">The line.</param>
    public sealed record NotTicked(AccountLine Line) : Culprit;

    /// <summary>The line is ticked, and its amount is the difference: the bank may not show it.</summary>
    /// <param name="Line">The line.</param>
    public sealed record NotThere(AccountLine Line) : Culprit;

    /// <summary>The line is ticked, and so is another of the same amount: one of them may have been entered twice.</summary>
    /// <param name="Line">The later one.</param>
    /// <param name="Twin">The other one.</param>
    public sealed record Twice(AccountLine Line, AccountLine Twin) : Culprit;

    /// <summary>The difference is twice the line's amount: it may have gone the other way.</summary>
    /// <param name="Line">The line.</param>
    public sealed record WrongSign(AccountLine Line) : Culprit;

    /// <summary>Two neighbouring digits of the line's amount, swapped, make up the difference.</summary>
    /// <param name="Line">The line.</param>
    /// <param name="Amount">What the bank may have, with its sign.</param>
    public sealed record Swapped(AccountLine Line, Money Amount) : Culprit;

    /// <summary>Two or three lines together make up the difference: those that are not ticked may be at the bank, and those that are may not.</summary>
    /// <param name="Lines">The lines.</param>
    public sealed record Together(ImmutableArray<AccountLine> Lines) : Culprit;

    /// <summary>No line is ticked, and none alone or with few others is the difference: ticking comes first.</summary>
    public sealed record NoneTicked : Culprit;

    /// <summary>Nothing here explains it: something isn't entered, such as a fee or interest.</summary>
    /// <param name="Amount">The difference: above zero what came in, below what went out.</param>
    public sealed record NotEntered(Money Amount) : Culprit;
}
