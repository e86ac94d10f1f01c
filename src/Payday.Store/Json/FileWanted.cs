using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Store.Json;

/// <summary>What belongs at a place of a file. One of the nested cases.</summary>
public abstract record FileWanted
{
    private FileWanted()
    {
    }

    /// <summary>An object.</summary>
    public sealed record Object : FileWanted;

    /// <summary>A list.</summary>
    public sealed record List : FileWanted;

    /// <summary>A text.</summary>
    public sealed record Text : FileWanted;

    /// <summary>An amount in quotes.</summary>
    public sealed record Amount(Currency Currency) : FileWanted;

    /// <summary>A fraction in quotes.</summary>
    public sealed record Fraction : FileWanted;

    /// <summary>A date.</summary>
    public sealed record Date : FileWanted;

    /// <summary>True or false.</summary>
    public sealed record Flag : FileWanted;

    /// <summary>A whole number.</summary>
    public sealed record Count(int Least, int Most) : FileWanted;

    /// <summary>One of some words.</summary>
    public sealed record Word(ImmutableArray<string> Words) : FileWanted;
}
