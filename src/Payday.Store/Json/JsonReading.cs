using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Payday.Store.Json;

/// <summary>What became of reading a JSON text: a value, or all that is wrong with the text.</summary>
/// <typeparam name="T">What was read.</typeparam>
public sealed class JsonReading<T>
    where T : class
{
    internal JsonReading(T? value, ImmutableArray<JsonFault> faults)
    {
        Value = value;
        Faults = faults;
    }

    /// <summary>The value, or null where there are faults.</summary>
    public T? Value { get; }

    /// <summary>All faults in the order of their lines; empty while <see cref="Ok"/>.</summary>
    public ImmutableArray<JsonFault> Faults { get; }

    /// <summary>Whether the text was read.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool Ok => Value is not null;
}
