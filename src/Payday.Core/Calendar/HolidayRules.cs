using System.Collections.Immutable;
using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>The bank holidays a household goes by: a rule set to start from, and dates of its own.</summary>
/// <param name="Set">A rule set, or <see cref="HolidaySet.None"/>.</param>
/// <param name="Extra">Further dates on which the bank is closed.</param>
public sealed record HolidayRules(HolidaySet Set, ImmutableArray<LocalDate> Extra)
{
    /// <summary>No bank holidays; weekends still count.</summary>
    public static HolidayRules None { get; } = new(HolidaySet.None, []);
}

/// <summary>A published rule set of bank holidays.</summary>
public enum HolidaySet
{
    /// <summary>None.</summary>
    None,

    /// <summary>US federal holidays, 5 U.S.C. 6103; Saturday is observed on Friday, Sunday on Monday.</summary>
    UnitedStates,

    /// <summary>Bank holidays of England and Wales, with their substitute days.</summary>
    EnglandAndWales,

    /// <summary>TARGET closing days of the European Central Bank; no substitutes.</summary>
    Target,
}
