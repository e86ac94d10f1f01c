using System.Collections.Immutable;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.ItemLines;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Setup.Forms;
using Payday.Texts;

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
    public override IEnumerable<DraftPlace> Places => items.Fields.Select(one => one.Place);

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

    /// <inheritdoc/>
    public override string? Begin(SetupWork work, ItemDraft item)
    {
        if (Begun(work.Begun) is not null)
        {
            return $"Another {Noun} was begun and isn't complete yet; in {Title}, a goes on with it.";
        }

        work.KeepBegun(items.Begun.Put(work.Begun, (TItem)item));
        return null;
    }

    /// <inheritdoc/>
    public override string? TakeLine(SetupWork work, string line)
    {
        if (Begun(work.Begun) is not null)
        {
            return $"Another {Noun} was begun and isn't complete yet; a goes on with it.";
        }

        Result<TItem> read = Read(line, new LineFacts(work.Currency, work.Style, DateOrders.Of(work.Currency), work.Today), Fresh(work));
        return read.Ok
            ? ListForm<TItem>.OfNew(work, items, read.Value).Settle()
            : FormTexts.Of(read.Fault, work.Style);
    }

    /// <summary>An item that is written as a line; what the line doesn't say is as in a new one.</summary>
    protected abstract Result<TItem> Read(string line, LineFacts facts, TItem fresh);

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
