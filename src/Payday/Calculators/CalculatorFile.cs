using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Formats;
using Payday.Store.Json;

namespace Payday.Calculators;

/// <summary>Reads the input of a calculator as a household file is read: into a draft, which is then checked.</summary>
internal static class CalculatorFile
{
    /// <summary>Reads it; what is wrong is reported to the cursor.</summary>
    /// <param name="file">The outermost value.</param>
    /// <param name="format">The fields of the draft.</param>
    /// <param name="currency">The currency of a draft's amounts; null where it has none.</param>
    /// <param name="make">Checks a draft, and makes what the calculator takes.</param>
    public static T Read<TDraft, T>(JsonCursor file, PartFormat<TDraft> format, Func<TDraft, Currency?> currency, Func<TDraft, DraftCheck, T> make)
        where TDraft : class, new()
    {
        var reading = new FileReading();
        TDraft draft = format.Read(file, reading);
        var check = new DraftCheck(currency(draft));
        T made = make(draft, check);
        format.Refuse(file, check.Faults, reading);
        return made;
    }
}
