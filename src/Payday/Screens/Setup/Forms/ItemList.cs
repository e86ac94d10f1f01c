using System.Collections.Immutable;
using Payday.Core.Drafts;
using Payday.Screens.Setup.Fields;

namespace Payday.Screens.Setup.Forms;

/// <summary>Where the items of a list stand, and what they have.</summary>
/// <typeparam name="TItem">An item.</typeparam>
/// <param name="Member">The list of the household.</param>
/// <param name="Begun">The item that was begun for it.</param>
/// <param name="Lines">Its lines that weren't taken yet.</param>
/// <param name="Fields">The fields of an item.</param>
internal sealed record ItemList<TItem>(
    DraftMember<HouseholdDraft, ImmutableArray<TItem>?> Member, DraftMember<BegunItems, TItem?> Begun, DraftMember<BegunItems, ImmutableArray<string>?> Lines, ImmutableArray<SetupField<TItem>> Fields)
    where TItem : ItemDraft
{
    /// <summary>The items.</summary>
    public ImmutableArray<TItem> Of(HouseholdDraft household) => Member.Of(household) ?? [];
}
