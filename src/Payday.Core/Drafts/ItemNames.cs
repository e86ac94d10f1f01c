using System.Collections.Immutable;

namespace Payday.Core.Drafts;

/// <summary>The names and ids of a list: names differ in more than case, and so do ids; an id left out is made from the name.</summary>
internal sealed class ItemNames
{
    private readonly DraftMember list;

    private ItemNames(DraftMember list, ImmutableArray<(string Id, string Name)> items)
    {
        this.list = list;
        Items = items;
    }

    /// <summary>Id and name of each item.</summary>
    public ImmutableArray<(string Id, string Name)> Items { get; }

    /// <summary>Checks names and ids.</summary>
    /// <param name="drafts">The items, or null.</param>
    /// <param name="list">The list.</param>
    /// <param name="noun">What an item is, for an id where its name has no plain letters.</param>
    /// <param name="check">The check.</param>
    /// <param name="arePots">Whether the items are pots.</param>
    public static ItemNames Of<TItem>(ImmutableArray<TItem>? drafts, DraftMember list, string noun, DraftCheck check, bool arePots = false)
        where TItem : ItemDraft
    {
        ImmutableArray<ItemDraft> items = [.. drafts ?? []];
        check.NotTooMany(items.Length, HouseholdLimits.MostItems, DraftPlace.Of(list));
        ImmutableArray<string> names = Names(items, list, check, arePots);

        // Ids that were given come first: a derived one gives way to them, wherever they stand.
        var taken = new HashSet<string>(StringComparer.Ordinal);
        string?[] ids = [.. items.Select((item, i) => Given(item.Id, DraftPlace.Of(list, i).Then(ItemMembers.Id), taken, check))];
        return new(list, [.. names.Select((name, i) => (ids[i] ?? ItemId.From(name, noun, taken), name))]);
    }

    /// <summary>The id of the item that an id or a name is of, or null.</summary>
    public string? Find(string text) => Items.FirstOrDefault(item => item.Id == text).Id
        ?? Items.FirstOrDefault(item => string.Equals(item.Name, text, StringComparison.OrdinalIgnoreCase)).Id;

    /// <summary>Makes the items.</summary>
    public ImmutableArray<T> Make<TItem, T>(ImmutableArray<TItem>? drafts, Func<TItem, string, string, DraftPlace, T> make) =>
        [.. (drafts ?? []).Select((draft, i) => make(draft, Items[i].Id, Items[i].Name, DraftPlace.Of(list, i)))];

    private static ImmutableArray<string> Names(ImmutableArray<ItemDraft> items, DraftMember list, DraftCheck check, bool arePots)
    {
        var firsts = new Dictionary<string, DraftPlace>(StringComparer.OrdinalIgnoreCase);
        var names = ImmutableArray.CreateBuilder<string>(items.Length);
        foreach ((int i, ItemDraft item) in items.Index())
        {
            DraftPlace place = DraftPlace.Of(list, i).Then(ItemMembers.Name);
            string name = check.Line(item.Name, place);
            names.Add(name);
            if (!check.IsSound(place))
            {
                continue;
            }

            if (!check.TakesAnyName && NameRule.Fault(name, arePots, place) is { } fault)
            {
                check.Refuse(fault);
            }
            else if (!firsts.TryAdd(name, DraftPlace.Of(list, i)))
            {
                check.Refuse(new DraftFault.NameTaken(place, name, firsts[name]));
            }
        }

        return names.MoveToImmutable();
    }

    private static string? Given(string? id, DraftPlace place, HashSet<string> taken, DraftCheck check)
    {
        if (id is null)
        {
            return null;
        }

        DraftFault? fault = LineRule.Fault(id, HouseholdLimits.LongestId, place)
            ?? (!ItemId.IsValid(id) ? new DraftFault.IdMalformed(place, id)
            : !taken.Add(id) ? new DraftFault.IdTaken(place, id)
            : null);
        if (fault is not null)
        {
            check.Refuse(fault);
        }

        return fault is null ? id : null;
    }
}
