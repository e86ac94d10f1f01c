using Payday.Core.Drafts;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.OpeningDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>What was there at the start, but for the parts that stand with each bill and pot.</summary>
internal static class OpeningFormat
{
    public static PartValue<OpeningDraft> Value { get; } = new(new(
        FileField.Of(Members.Account, "account", FileValues.Amount),
        FileField.Of(Members.LooseNotes, "notesOnHand", new CountsValue(() => Members.LooseNotes))));
}
