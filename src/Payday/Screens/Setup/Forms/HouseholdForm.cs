using System.Collections.Immutable;
using Payday.Core.Drafts;
using Payday.Screens.Setup.Fields;

namespace Payday.Screens.Setup.Forms;

/// <summary>A form of the household's own fields.</summary>
/// <param name="work">The household.</param>
/// <param name="fields">The fields.</param>
internal sealed class HouseholdForm(SetupWork work, ImmutableArray<SetupField<HouseholdDraft>> fields)
    : ItemForm<HouseholdDraft>(work, fields, work.Draft)
{
    /// <inheritdoc/>
    public override bool IsNew => false;

    /// <inheritdoc/>
    public override bool IsBegun => false;

    /// <inheritdoc/>
    protected override bool TakesParts => Work.TakesParts;

    /// <inheritdoc/>
    public override void Restart()
    {
    }

    /// <inheritdoc/>
    protected override (HouseholdDraft Household, DraftPlace Place) Placed(HouseholdDraft next) => (next, DraftPlace.Whole);

    /// <inheritdoc/>
    protected override string? Store(HouseholdDraft household, DraftPlace place, DraftPlace changed) => Work.Put(household, changed);
}
