using Payday.Core.Drafts;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.SmallMoneyDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>The small money that a pot wants: <c>{"note":"5","atLeast":"25.00"}</c>.</summary>
public static class SmallMoneyFormat
{
    /// <summary>The fields.</summary>
    public static PartValue<SmallMoneyDraft> Value { get; } = new(new(
        FileField.Of(Members.Note, "note", FileValues.Piece),
        FileField.Of(Members.AtLeast, "atLeast", FileValues.Amount)));
}
