using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Store.Json;

/// <summary>What belongs at a place of a file. One of the nested cases.</summary>
public abstract record JsonWanted
{
    private JsonWanted()
    {
    }

    /// <summary>An object.</summary>
    public sealed record Object : JsonWanted;

    /// <summary>A list.</summary>
    public sealed record List : JsonWanted;

    /// <summary>A text.</summary>
    public sealed record Text : JsonWanted;

    /// <summary>An amount in quotes.</summary>
    public sealed record Amount(Currency Currency) : JsonWanted;

    /// <summary>A fraction in quotes.</summary>
    public sealed record Fraction : JsonWanted;

    /// <summary>A date.</summary>
    public sealed record Date : JsonWanted;

    /// <summary>True or false.</summary>
    public sealed record Flag : JsonWanted;

    /// <summary>A whole number.</summary>
    public sealed record Count(int Least, int Most) : JsonWanted;

    /// <summary>One of some words.</summary>
    public sealed record Word(ImmutableArray<string> Words) : JsonWanted;
}
