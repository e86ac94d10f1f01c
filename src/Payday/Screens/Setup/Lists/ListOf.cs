using System.Collections.Immutable;
using Payday.Core.Drafts;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Setup.Forms;

namespace Payday.Screens.Setup.Lists;

/// <summary>A list of the household, with what its items are.</summary>
/// <typeparam name="TItem">An item.</typeparam>
/// <param name="items">Where the items stand, and what they have.</param>
internal abstract class ListOf<TItem>(ItemList<TItem> items) : SetupList
    where TItem : ItemDraft
{
    /// <inheritdoc/>
    public override DraftMember Member => items.Member;

    /// <inheritdoc/>
    public override ImmutableArray<(int Index, ItemDraft Item)> Ordered(HouseholdDraft household) =>
        [.. Order(items.Of(household).Index().Select(one => (one.Index, one.Item))).Select(one => (one.Index, (ItemDraft)one.Item))];

    /// <inheritdoc/>
    public override ImmutableArray<string> Cells(int index, SetupFacts facts) => Cells(items.Of(facts.Draft)[index], facts);

    /// <inheritdoc/>
    public override ItemDraft? Begun(BegunItems begun) => items.Begun.Of(begun);

    /// <inheritdoc/>
    public override IItemForm Form(SetupWork work, int index) => ListForm<TItem>.Of(work, items, index);

    /// <inheritdoc/>
    public override IItemForm NewForm(SetupWork work) => ListForm<TItem>.OfNew(work, items, () => Fresh(work));

    /// <inheritdoc/>
    public override HouseholdDraft Without(HouseholdDraft household, int index) => items.Member.Put(household, items.Of(household).RemoveAt(index));

    /// <inheritdoc/>
    public override HouseholdDraft Exchanged(HouseholdDraft household, int one, int other)
    {
        ImmutableArray<TItem> list = items.Of(household);
        (TItem first, TItem second) = Exchanged(list[one], list[other]);
        return items.Member.Put(household, list.SetItem(one, second).SetItem(other, first));
    }

    /// <summary>The cells of an item.</summary>
    protected abstract ImmutableArray<string> Cells(TItem item, SetupFacts facts);

    /// <summary>A new item, with the usual choices made.</summary>
    protected abstract TItem Fresh(SetupFacts facts);

    /// <summary>The items in the order shown.</summary>
    protected virtual IEnumerable<(int Index, TItem Item)> Order(IEnumerable<(int Index, TItem Item)> list) => list;

    /// <summary>Two items that change places, with what goes with the place.</summary>
    protected virtual (TItem First, TItem Second) Exchanged(TItem first, TItem second) => (first, second);

    /// <summary>A form of an item, and what it is.</summary>
    protected ListForm<TItem> FormOf(SetupWork work, int index) => ListForm<TItem>.Of(work, items, index);

    /// <summary>An item.</summary>
    protected TItem Item(SetupFacts facts, int index) => items.Of(facts.Draft)[index];

    /// <summary>An amount of an item as the household writes it; empty where there is none.</summary>
    protected static string Amount(decimal? value, SetupFacts facts) => value is { } amount ? AmountType.Shown(amount, facts) : "";
}
