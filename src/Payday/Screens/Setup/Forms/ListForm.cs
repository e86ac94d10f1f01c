using System.Collections.Immutable;
using Payday.Core.Drafts;

namespace Payday.Screens.Setup.Forms;

/// <summary>A form of an item of a list, or of one to be added.</summary>
/// <typeparam name="TItem">The item.</typeparam>
internal sealed class ListForm<TItem> : ItemForm<TItem>
    where TItem : ItemDraft
{
    private readonly ItemList<TItem> list;
    private readonly Func<TItem> fresh;
    private int? index;

    private ListForm(SetupWork work, ItemList<TItem> list, int? index, TItem values, Func<TItem> fresh)
        : base(work, list.Fields, values)
    {
        this.list = list;
        this.index = index;
        this.fresh = fresh;
        IsStored = index is not null;
    }

    /// <inheritdoc/>
    public override bool IsNew => index is null;

    /// <inheritdoc/>
    public override bool IsBegun => IsNew && list.Begun.Of(Work.Begun) is not null;

    /// <inheritdoc/>
    protected override bool TakesParts => false;

    /// <summary>A form of an item.</summary>
    public static ListForm<TItem> Of(SetupWork work, ItemList<TItem> list, int index) => new(work, list, index, list.Of(work.Draft)[index], () => throw new InvalidOperationException("It is there."));

    /// <summary>A form of an item to be added: the one that was begun before and not completed, or a new one.</summary>
    public static ListForm<TItem> OfNew(SetupWork work, ItemList<TItem> list, Func<TItem> fresh) =>
        new(work, list, null, list.Begun.Of(work.Begun) ?? fresh(), fresh);

    /// <summary>A form of an item to be added that has values already.</summary>
    public static ListForm<TItem> OfNew(SetupWork work, ItemList<TItem> list, TItem values) => new(work, list, null, values, () => values);

    /// <inheritdoc/>
    public override void Restart()
    {
        Work.ForgetBegun(list.Begun.Put(Work.Begun, null));
        Values = fresh();
    }

    /// <inheritdoc/>
    protected override (HouseholdDraft Household, DraftPlace Place) Placed(TItem next)
    {
        ImmutableArray<TItem> items = list.Of(Work.Draft);
        int at = index ?? items.Length;
        return (
            list.Member.Put(Work.Draft, at < items.Length ? items.SetItem(at, next) : items.Add(next)),
            DraftPlace.Of(list.Member, at));
    }

    // What was begun goes with the same write that has it whole, so that it is never there twice.
    /// <inheritdoc/>
    protected override string? Store(HouseholdDraft household, DraftPlace place, DraftPlace changed)
    {
        BegunItems begun = Work.Begun;
        if (IsNew)
        {
            Work.ForgetBegun(list.Begun.Put(begun, null));
        }

        string? fault = Work.Put(household, place);
        if (fault is not null)
        {
            Work.ForgetBegun(begun);
            return fault;
        }

        index = place.Steps[^1].Item;
        return null;
    }

    /// <inheritdoc/>
    protected override TItem Stored(TItem next) => (TItem)((ItemDraft)next with { Id = list.Of(Work.Draft)[index!.Value].Id });

    /// <inheritdoc/>
    protected override void Keep()
    {
        if (IsNew)
        {
            Work.KeepBegun(list.Begun.Put(Work.Begun, Values));
        }
    }
}
