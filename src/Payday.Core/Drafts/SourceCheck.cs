using Payday.Core.Calendar;
using Payday.Core.Ids;

namespace Payday.Core.Drafts;

/// <summary>Makes an income source of a draft.</summary>
internal static class SourceCheck
{
    public static IncomeSource Of(SourceDraft source, string id, string name, DraftPlace place, DraftCheck check) => new(
        new SourceId(id),
        name,
        ScheduleCheck.Of(source.Schedule, place.Then(SourceDraft.Members.Schedule), check),
        check.Needed(source.Shift, place.Then(SourceDraft.Members.Shift), Shift.None),
        check.Amount(source.Expected, place.Then(SourceDraft.Members.Expected)),
        check.LaterDateOrNone(source.Until, place.Then(SourceDraft.Members.Until)))
    {
        Later = LaterCheck.Of(source.Later, SourceDraft.Members.Later, place, check),
    };
}
