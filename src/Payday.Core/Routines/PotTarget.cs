using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>What a pot fills up to.</summary>
public static class PotTarget
{
    /// <summary>Of a sinking pot its target by the date that it saves for, of a reserve its level that day; null for others.</summary>
    /// <param name="book">The book.</param>
    /// <param name="pot">A pot of it.</param>
    /// <param name="day">The day.</param>
    public static Money? Of(Book book, Pot pot, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(pot);
        return pot.Kind switch
        {
            PotKind.Sinking { Later.All.IsEmpty: true } kind => kind.Target,
            PotKind.Sinking kind => kind.TargetBy(PotRecord.Sinking(book, pot.Id, kind, book.Household.Holidays, day).By),
            PotKind.Reserve kind => kind.LevelOn(day),
            _ => null,
        };
    }
}
