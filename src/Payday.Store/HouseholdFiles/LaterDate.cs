using NodaTime;
using Payday.Core.Households;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Dates that lie after the start of the household.</summary>
internal static class LaterDate
{
    /// <summary>Reads a date from the start on, at most a hundred years after it.</summary>
    public static LocalDate Read(JsonCursor field, HouseholdParts parts)
    {
        LocalDate date = field.Date();
        if (!field.IsSound || parts.Start is not { } start)
        {
            return date;
        }

        if (date < start)
        {
            field.Refuse($"{date:uuuu-MM-dd} is before the household starts, {start:uuuu-MM-dd}; write a later date.");
        }
        else if (date > start.PlusYears(Household.MostYears))
        {
            field.Refuse($"{date:uuuu-MM-dd} is more than {Household.MostYears} years off; look for a mistyped year.");
        }

        return date;
    }
}
