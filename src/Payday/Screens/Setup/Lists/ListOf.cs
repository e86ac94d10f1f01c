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
    public override ImmutableArray<string> Lines(BegunItems begun) => items.Lines.Of(begun) ?? [];

    /// <inheritdoc/>
    public override BegunItems WithLines(BegunItems begun, ImmutableArray<string> lines) => items.Lines.Put(begun, lines.IsEmpty ? null : lines);

    /// <inheritdoc/>
    public override ImmutableArray<LineReading> Read(SetupWork work, ImmutableArray<string> lines)
    {
        LineFacts facts = LineFactsOf(work);
        TItem fresh = Fresh(work);
        LineReading[] readings = [.. lines.Select((line, at) => Reading(line, Read(line, facts, Later(fresh, at)), work))];

        // All at once: what is wrong between them, such as a name that is there twice, is seen, and a household is checked but once.
        ImmutableArray<TItem> there = items.Of(work.Draft);
        int[] whole = [.. Enumerable.Range(0, readings.Length).Where(at => readings[at].Fault is null)];
        Func<DraftPlace, string?> faults = work.FaultsOf(items.Member.Put(work.Draft, [.. there, .. whole.Select(at => (TItem)readings[at].Item!)]));
        for (int at = 0; at < whole.Length; at++)
        {
            readings[whole[at]] = readings[whole[at]] with { Fault = faults(DraftPlace.Of(items.Member, there.Length + at)) };
        }

        return [.. readings];
    }

    /// <inheritdoc/>
    public override HouseholdDraft With(HouseholdDraft household, ImmutableArray<LineReading> lines) =>
        items.Member.Put(household, [.. items.Of(household), .. lines.Where(line => line.Fault is null).Select(line => (TItem)line.Item!)]);

    /// <inheritdoc/>
    public override ImmutableArray<string> Cells(ItemDraft item, SetupFacts facts) => Cells((TItem)item, facts);

    /// <inheritdoc/>
    public override string Written(ItemDraft item, SetupFacts facts) => Written((TItem)item, LineFactsOf(facts));

    /// <inheritdoc/>
    public override HouseholdDraft Without(HouseholdDraft household, ImmutableArray<string> names) =>
        items.Member.Put(household, [.. items.Of(household).Where(item => !names.Contains(item.Name!))]);

    /// <summary>An item that is written as a line; what the line doesn't say is as in a new one.</summary>
    protected abstract Result<TItem> Read(string line, LineFacts facts, TItem fresh);

    /// <summary>A new item as it is where some others come before it.</summary>
    protected virtual TItem Later(TItem fresh, int others) => fresh;

    /// <summary>An item as a line.</summary>
    protected abstract string Written(TItem item, LineFacts facts);

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

    private static LineFacts LineFactsOf(SetupFacts work) => new(work.Currency, work.Style, DateOrders.Of(work.Currency), work.Today);

    // A line that leaves something needed open says what.
    private LineReading Reading(string line, Result<TItem> read, SetupWork work)
    {
        if (!read.Ok)
        {
            return new(line, null, read.Fault is LineFault.NoAmount ? LineTexts.NoAmount(line, LineExample) : FormTexts.Of(read.Fault, work.Style));
        }

        string[] open = [.. items.Fields.Where(field => field.Applies(read.Value, work) && field.Needed && field.IsEmpty(read.Value, work)).Select(field => field.Label)];
        return new(line, read.Value, open.Length == 0 ? null : LineTexts.Open(line, open, LineExample));
    }
}
