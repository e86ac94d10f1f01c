using Payday.Core.Drafts;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.BankDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>
/// Where notes come from: <c>{"kind":"teller"}</c> or <c>{"kind":"machine","notes":["20"],"limit":"500"}</c>,
/// the limit optional.
/// </summary>
public static class BankFormat
{
    /// <summary>The fields.</summary>
    public static PartValue<BankDraft> Value { get; } = new(new(
        FileField.Of(Members.Kind, "kind", new WordValue<BankKind>(Words.Banks)),
        FileField.Of(Members.Notes, "notes", FileValues.Pieces),
        FileField.Of(Members.Limit, "limit", FileValues.Amount))
    {
        IsKnown = bank => bank.Kind is not null,
    });
}
