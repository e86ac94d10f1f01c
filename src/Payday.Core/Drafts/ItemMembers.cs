namespace Payday.Core.Drafts;

/// <summary>The members that sources, bills, debts and pots share.</summary>
/// <remarks>They are the same members whichever list a place leads through.</remarks>
public static class ItemMembers
{
    /// <summary><see cref="ItemDraft.Id"/>.</summary>
    public static DraftMember<ItemDraft, string?> Id { get; } = new(item => item.Id, (item, id) => item with { Id = id });

    /// <summary><see cref="ItemDraft.Name"/>.</summary>
    public static DraftMember<ItemDraft, string?> Name { get; } = new(item => item.Name, (item, name) => item with { Name = name });

    /// <summary>The way to a member that all items have, from one kind of them.</summary>
    public static DraftPath<TItem, string?> Of<TItem>(DraftMember<ItemDraft, string?> member)
        where TItem : ItemDraft
    {
        ArgumentNullException.ThrowIfNull(member);
        return new(DraftPlace.Of(member), member.Of, (item, value) => (TItem)member.Put(item, value), _ => true);
    }
}
