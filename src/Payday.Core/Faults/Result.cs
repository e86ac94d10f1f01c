using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Payday.Core.Faults;

/// <summary>What became of something that can be refused: its value, or all that is in the way.</summary>
/// <typeparam name="T">What comes of it where it isn't refused.</typeparam>
/// <remarks><c>default</c> is neither refused nor has it a value; it only stands where nothing was asked.</remarks>
public readonly record struct Result<T>
{
    private readonly ImmutableArray<Fault> faults;

    internal Result(T? value, ImmutableArray<Fault> faults)
    {
        Value = value;
        this.faults = faults;
    }

    /// <summary>The value; only meaningful while <see cref="Ok"/>.</summary>
    public T? Value { get; }

    /// <summary>All that is in the way, the first thing to mend first; empty while <see cref="Ok"/>.</summary>
    public ImmutableArray<Fault> Faults => faults.IsDefault ? [] : faults;

    /// <summary>The first of <see cref="Faults"/>, or null.</summary>
    public Fault? Fault => faults.IsDefaultOrEmpty ? null : faults[0];

    /// <summary>Whether nothing is in the way.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Fault))]
    public bool Ok => faults.IsDefaultOrEmpty;

    /// <summary>What follows from the value; where there is none, the same faults.</summary>
    public Result<TNext> Then<TNext>(Func<T, Result<TNext>> next)
    {
        ArgumentNullException.ThrowIfNull(next);
        return Ok ? next(Value) : new Result<TNext>(default, faults);
    }

    /// <summary>What a sure function makes of the value; where there is none, the same faults.</summary>
    public Result<TNext> Map<TNext>(Func<T, TNext> next)
    {
        ArgumentNullException.ThrowIfNull(next);
        return Ok ? Result.Of(next(Value)) : new Result<TNext>(default, faults);
    }

    /// <summary>Whether both have the same value, or the same faults in the same order.</summary>
    public bool Equals(Result<T> other) =>
        EqualityComparer<T?>.Default.Equals(Value, other.Value) && Faults.SequenceEqual(other.Faults);

    /// <summary>In line with <see cref="Equals(Result{T})"/>.</summary>
    public override int GetHashCode() => HashCode.Combine(Value, Faults.Length, Fault);
}

/// <summary>Makes <see cref="Result{T}"/> values.</summary>
public static class Result
{
    /// <summary>What was not refused.</summary>
    public static Result<T> Of<T>(T value) => new(value, default);

    /// <summary>What was refused.</summary>
    /// <param name="faults">All that is in the way, at least one.</param>
    /// <exception cref="ArgumentException">There is no fault.</exception>
    public static Result<T> Refused<T>(params ImmutableArray<Fault> faults) => faults.IsDefaultOrEmpty
        ? throw new ArgumentException("A refusal has at least one fault.", nameof(faults))
        : new Result<T>(default, faults);

    /// <summary>What was refused for one reason.</summary>
    public static Result<T> Refused<T>(Fault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return new Result<T>(default, [fault]);
    }
}
