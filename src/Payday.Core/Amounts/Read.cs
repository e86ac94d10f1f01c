using System.Diagnostics.CodeAnalysis;

namespace Payday.Core.Amounts;

/// <summary>What became of reading a person's input: a value, or one clear sentence on what is wrong.</summary>
/// <typeparam name="T">What was read.</typeparam>
public readonly record struct Read<T>
{
    internal Read(T? value, string? fault)
    {
        Value = value;
        Fault = fault;
    }

    /// <summary>The value; only meaningful while <see cref="Ok"/>.</summary>
    public T? Value { get; }

    /// <summary>What is wrong and how to mend it, or null.</summary>
    public string? Fault { get; }

    /// <summary>Whether the input was read.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Fault))]
    public bool Ok => Fault is null;
}

/// <summary>Makes <see cref="Read{T}"/> values.</summary>
public static class Read
{
    /// <summary>A value that was read.</summary>
    public static Read<T> Of<T>(T value) => new(value, null);

    /// <summary>Input that could not be read.</summary>
    /// <param name="fault">One sentence: what is wrong and how to mend it.</param>
    public static Read<T> Refused<T>(string fault) => new(default, fault);
}
