using System.Collections.Immutable;
using Payday.Core.Drafts;
using Payday.Core.ItemLines;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Setup.Forms;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>One of the household's lists: how it shows, and what can be done with its items.</summary>
internal abstract class SetupList
{
    /// <summary>What an item is.</summary>
    public abstract string Noun { get; }

    /// <summary>What the person reads.</summary>
    public abstract string Title { get; }

    /// <summary>What it is for, in a sentence.</summary>
    public abstract string Help { get; }

    /// <summary>What can be done instead of taking an item out that the ledger names.</summary>
    public abstract string Instead { get; }

    /// <summary>What the name of an item is for.</summary>
    protected static string NameHelp => $"What you call it, 1 to {HouseholdLimits.LongestName} characters; it also stands on slips and sheets.";

    /// <summary>Whether a household needs at least one.</summary>
    public virtual bool IsNeeded => false;

    /// <summary>Whether the order of the items says which is cut last.</summary>
    public virtual bool IsRanked => false;

    /// <summary>Whether an item ends on a date, rather than being taken out.</summary>
    public virtual bool HasEnd => false;

    // Below the members that it needs: static properties are made in the order of the text.
    /// <summary>All lists, in the order in which a household is set up.</summary>
    public static ImmutableArray<SetupList> All { get; } = [new SourceList(), new BillList(), new DebtList(), new PotList()];

    /// <summary>The list of the household.</summary>
    public abstract DraftMember Member { get; }

    /// <summary>Where the fields of an item stand in it.</summary>
    public abstract IEnumerable<DraftPlace> Places { get; }

    /// <summary>The columns of the list.</summary>
    public abstract ImmutableArray<TextColumn> Columns { get; }

    /// <summary>The items in the order shown, each with its place in the household.</summary>
    public abstract ImmutableArray<(int Index, ItemDraft Item)> Ordered(HouseholdDraft household);

    /// <summary>The cells of an item.</summary>
    public abstract ImmutableArray<string> Cells(int index, SetupFacts facts);

    /// <summary>The item that was begun for it and isn't complete yet, or null.</summary>
    public abstract ItemDraft? Begun(BegunItems begun);

    /// <summary>A form of an item.</summary>
    public abstract IItemForm Form(SetupWork work, int index);

    /// <summary>A form of an item to be added.</summary>
    public abstract IItemForm NewForm(SetupWork work);

    /// <summary>Keeps an item that isn't whole as begun, so that <see cref="NewForm"/> goes on with it.</summary>
    /// <returns>Why not, or null.</returns>
    public abstract string? Begin(SetupWork work, ItemDraft item);

    /// <summary>How an item is written as a line.</summary>
    public abstract string LineExample { get; }

    /// <summary>Further lines, which show what else one can say.</summary>
    public abstract string LineExamples { get; }

    /// <summary>Which lines are for it.</summary>
    public abstract ItemSection Section { get; }

    /// <summary>In which of its columns the name stands.</summary>
    public virtual int NameColumn => 0;

    /// <summary>Its lines that weren't taken yet.</summary>
    public abstract ImmutableArray<string> Lines(BegunItems begun);

    /// <summary>What was begun, with other lines of this list.</summary>
    public abstract BegunItems WithLines(BegunItems begun, ImmutableArray<string> lines);

    /// <summary>Reads lines; see <see cref="ItemLine"/>. Two items of one name are seen too.</summary>
    public abstract ImmutableArray<LineReading> Read(SetupWork work, ImmutableArray<string> lines);

    /// <summary>The household with all of the lines that can be taken.</summary>
    public abstract HouseholdDraft With(HouseholdDraft household, ImmutableArray<LineReading> lines);

    /// <summary>The cells of an item that isn't in the list.</summary>
    public abstract ImmutableArray<string> Cells(ItemDraft item, SetupFacts facts);

    /// <summary>An item as a line in its plainest words; see <see cref="ItemText"/>.</summary>
    public abstract string Written(ItemDraft item, SetupFacts facts);

    /// <summary>Takes back the items of this list that were taken last from lines; they are lines again.</summary>
    /// <returns>Why not, a sentence, or null.</returns>
    public string? TakeBack(SetupWork work)
    {
        if (work.LastTaken is not { } last || last.List != Member)
        {
            return "Nothing was taken from lines here.";
        }

        foreach ((_, ItemDraft item) in Ordered(work.Draft).Where(one => last.Names.Contains(one.Item.Name!)))
        {
            if (item.Id is { } id && work.WhyKept(Member, id) is { } reason)
            {
                return $"{CleanText.OneLine(item.Name!)}: {reason}";
            }
        }

        BegunItems before = work.Begun;
        work.ForgetBegun(WithLines(before, [.. last.Lines, .. Lines(before)]));
        if (work.Put(Without(work.Draft, last.Names), DraftPlace.Of(Member)) is { } fault)
        {
            work.ForgetBegun(before);
            return fault;
        }

        work.LastTaken = null;
        return null;
    }

    /// <summary>The household without items that were taken from lines.</summary>
    public abstract HouseholdDraft Without(HouseholdDraft household, ImmutableArray<string> names);

    /// <summary>What the last date of an item is typed from; empty for none.</summary>
    public virtual string EndOf(int index, SetupFacts facts) => "";

    /// <summary>Puts the last date of an item.</summary>
    /// <returns>What is wrong with it, or null.</returns>
    public virtual string? End(SetupWork work, int index, string text) => throw new InvalidOperationException("It has no end.");

    /// <summary>The household without an item.</summary>
    public abstract HouseholdDraft Without(HouseholdDraft household, int index);

    /// <summary>The household with two items exchanged.</summary>
    public abstract HouseholdDraft Exchanged(HouseholdDraft household, int one, int other);
}
