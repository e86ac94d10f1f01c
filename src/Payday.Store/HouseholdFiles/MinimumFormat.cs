using Payday.Core.Drafts;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.MinimumDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>
/// The least payment on a debt: <c>{"fixed":"50.00"}</c> or <c>{"percent":"0.02","floor":"20.00"}</c>,
/// the latter with <c>"plusInterest":true</c> where the month's interest comes on top of the part.
/// </summary>
public static class MinimumFormat
{
    private const string Fixed = "fixed";

    /// <summary>The fields; which there are says the kind.</summary>
    public static PartValue<MinimumDraft> Value { get; } = new(new(
        FileField.Always(Members.Fixed, Fixed, FileValues.Amount),
        FileField.Of(Members.Percent, "percent", FileValues.Rate),
        FileField.Of(Members.PlusInterest, "plusInterest", new FlagValue()),
        FileField.Of(Members.Floor, "floor", FileValues.Amount))
    {
        Begin = fields => new() { Kind = fields.Has(Fixed) ? MinimumKind.Fixed : MinimumKind.Part },
    });
}
