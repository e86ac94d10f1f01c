using Payday.Core.Amounts;

namespace Payday.Core.Calendar;

/// <summary>The bank holidays to start a household from. A person can change them.</summary>
public static class HolidayDefaults
{
    /// <summary>
    /// The rule set of the banks that settle a currency: the Federal Reserve keeps the US federal holidays, banks of England
    /// and Wales their bank holidays, the Eurosystem the TARGET closing days; none for any other currency.
    /// </summary>
    public static HolidaySet For(Currency currency) => currency.Code switch
    {
        "USD" => HolidaySet.UnitedStates,
        "GBP" => HolidaySet.EnglandAndWales,
        "EUR" => HolidaySet.Target,
        _ => HolidaySet.None,
    };
}
