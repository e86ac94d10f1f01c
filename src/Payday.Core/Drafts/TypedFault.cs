using System.Collections.Immutable;
using Payday.Core.Faults;

namespace Payday.Core.Drafts;

/// <summary>What was typed into a field and can't be read as what belongs there. One of the nested cases.</summary>
public abstract record TypedFault : Fault
{
    private TypedFault()
    {
    }

    /// <summary>No whole number.</summary>
    public sealed record NotACount(string Typed, int Least, int Most) : TypedFault;

    /// <summary>No day of a month.</summary>
    public sealed record NotADay(string Typed) : TypedFault;

    /// <summary>No percentage.</summary>
    public sealed record NotAPercentage(string Typed) : TypedFault;

    /// <summary>No currency's code.</summary>
    public sealed record NotACode(string Typed) : TypedFault;

    /// <summary>None of the choices.</summary>
    public sealed record NotAChoice(string Typed, ImmutableArray<string> Choices) : TypedFault;

    /// <summary>One of several dates that is none.</summary>
    public sealed record NotADate(string Typed, Fault Why) : TypedFault;

    /// <summary>No amount with the date from which it holds.</summary>
    public sealed record NotAChange(string Typed) : TypedFault;

    /// <summary>No dates at all.</summary>
    public sealed record NoDates : TypedFault;

    /// <summary>No values of notes or coins at all.</summary>
    public sealed record NoPieces : TypedFault;
}
