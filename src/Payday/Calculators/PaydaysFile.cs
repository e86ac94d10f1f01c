using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Store.Json;
using Members = Payday.Calculators.PaydaysDraft.Members;

namespace Payday.Calculators;

/// <summary>The input of the <c>paydays</c> calculator.</summary>
/// <param name="Sources">Who pays; the name is the id.</param>
/// <param name="Holidays">The bank holidays.</param>
internal sealed record PaydaysFile(ImmutableArray<IncomeSource> Sources, HolidayRules Holidays)
{
    /// <summary>Reads it.</summary>
    public static PaydaysFile Read(JsonCursor file) => CalculatorFile.Read(file, PaydaysDraft.Fields, _ => null, Of);

    private static PaydaysFile Of(PaydaysDraft draft, DraftCheck check)
    {
        check.IsThere(draft.Sources, DraftPlace.Of(Members.Sources));
        ImmutableArray<IncomeSource> sources = [.. (draft.Sources ?? []).Select((source, i) => Of(source, DraftPlace.Of(Members.Sources, i), check))];
        SameNames.Refuse(sources, source => source.Name, Members.Sources, areDebts: false, check);
        HolidayDraft holidays = draft.Holidays ?? new HolidayDraft();
        return new PaydaysFile(sources, new HolidayRules(
            holidays.Set ?? HolidaySet.None,
            check.Dates(holidays.Extra ?? [], HolidayDraft.Members.Extra, DraftPlace.Of(Members.Holidays))));
    }

    private static IncomeSource Of(SourceDraft source, DraftPlace place, DraftCheck check)
    {
        string name = check.Line(source.Name, place.Then(ItemMembers.Name));
        return new IncomeSource(
            new(name),
            name,
            ScheduleCheck.Of(source.Schedule, place.Then(SourceDraft.Members.Schedule), check),
            source.Shift ?? Shift.None,
            Money.Zero(default));
    }
}
