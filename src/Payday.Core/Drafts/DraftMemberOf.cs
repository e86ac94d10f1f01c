using System.Runtime.CompilerServices;

namespace Payday.Core.Drafts;

/// <summary>A member of a part of a draft, with how it is got and set: the one thing that a field of a form and a field of a file both need.</summary>
/// <typeparam name="TPart">The part.</typeparam>
/// <typeparam name="TValue">What it holds; null where it is missing.</typeparam>
/// <param name="get">Gets it.</param>
/// <param name="set">The part with another value in it.</param>
/// <param name="name">What the code calls it.</param>
public sealed class DraftMember<TPart, TValue>(
    Func<TPart, TValue> get, Func<TPart, TValue, TPart> set, [CallerMemberName] string name = "") : DraftMember(name)
{
    /// <summary>Whether a part has this member at all, going by its kind.</summary>
    public Func<TPart, bool> Belongs { get; init; } = _ => true;

    /// <summary>What the part holds; null where it is missing.</summary>
    public TValue Of(TPart part) => get(part);

    /// <summary>The part with another value in it; null takes it out.</summary>
    public TPart Put(TPart part, TValue value) => set(part, value);
}
