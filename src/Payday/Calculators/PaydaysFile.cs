using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;

namespace Payday.Calculators;

/// <summary>The input of the <c>paydays</c> calculator.</summary>
/// <param name="Sources">Who pays; the name is the id.</param>
/// <param name="Holidays">The bank holidays.</param>
internal sealed record PaydaysFile(ImmutableArray<IncomeSource> Sources, HolidayRules Holidays)
{
    private const int MostSources = 500;

    /// <summary>Reads it.</summary>
    public static PaydaysFile Read(JsonCursor file)
    {
        JsonFields fields = file.Fields();
        JsonCursor list = fields.Required("sources");
        IReadOnlyList<JsonCursor> items = list.Items(MostSources);
        ImmutableArray<IncomeSource> sources = [.. items.Select(ReadSource)];
        foreach ((JsonCursor item, IncomeSource source) in items.Zip(sources))
        {
            if (item.IsSound && sources.Count(other => other.Id == source.Id) > 1)
            {
                item.Refuse("Two sources have this name; give each a name of its own.");
            }
        }

        HolidayRules holidays = fields.Optional("holidays") is { } rules ? HolidayFormat.ReadSetOrDates(rules) : HolidayRules.None;
        fields.RefuseOthers();
        return new PaydaysFile(sources, holidays);
    }

    private static IncomeSource ReadSource(JsonCursor source)
    {
        JsonFields fields = source.Fields();
        string name = fields.Required("name").OneLine(CalculatorFields.LongestName);
        var read = new IncomeSource(
            new(name),
            name,
            ScheduleFormat.Read(fields.Required("schedule")),
            fields.Optional("shift") is { } shift ? shift.OneOf(Words.Shifts) : Shift.None,
            Money.Zero(default));
        fields.RefuseOthers();
        return read;
    }
}
