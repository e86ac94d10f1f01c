namespace Payday.Core.Drafts;

/// <summary>A way from a part of a draft to a member in it or further in: where it stands, and how it is got and set.</summary>
/// <typeparam name="TPart">Where it begins.</typeparam>
/// <typeparam name="TValue">What stands at its end; null where it is missing.</typeparam>
/// <param name="Place">Where that is in the part.</param>
/// <param name="Get">Gets it.</param>
/// <param name="Set">The part with another value in it.</param>
/// <param name="Belongs">Whether the part has it at all, going by its kind.</param>
public sealed record DraftPath<TPart, TValue>(DraftPlace Place, Func<TPart, TValue> Get, Func<TPart, TValue, TPart> Set, Func<TPart, bool> Belongs);

/// <summary>Makes <see cref="DraftPath{TPart, TValue}"/>s.</summary>
public static class DraftPath
{
    /// <summary>The way to a member.</summary>
    public static DraftPath<TPart, TValue> To<TPart, TValue>(DraftMember<TPart, TValue> member)
    {
        ArgumentNullException.ThrowIfNull(member);
        return new(DraftPlace.Of(member), member.Of, member.Put, member.Belongs);
    }

    /// <summary>The way to a member of a member, which is made where it is missing, and goes where nothing is left in it.</summary>
    public static DraftPath<TPart, TValue> To<TPart, TInner, TValue>(DraftMember<TPart, TInner?> outer, DraftMember<TInner, TValue> inner)
        where TInner : class, new() => To(outer, To(inner));

    /// <inheritdoc cref="To{TPart, TInner, TValue}(DraftMember{TPart, TInner}, DraftMember{TInner, TValue})"/>
    public static DraftPath<TPart, TValue> To<TPart, TInner, TValue>(DraftMember<TPart, TInner?> outer, DraftPath<TInner, TValue> inner)
        where TInner : class, new()
    {
        ArgumentNullException.ThrowIfNull(outer);
        ArgumentNullException.ThrowIfNull(inner);
        var nothing = new TInner();
        return new(
            DraftPlace.Of(outer).Then(inner.Place),
            part => inner.Get(outer.Of(part) ?? nothing),
            (part, value) =>
            {
                TInner changed = inner.Set(outer.Of(part) ?? nothing, value);
                return outer.Put(part, changed.Equals(nothing) ? null : changed);
            },
            part => outer.Belongs(part) && inner.Belongs(outer.Of(part) ?? nothing));
    }
}
