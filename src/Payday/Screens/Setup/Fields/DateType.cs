using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Text;

namespace Payday.Screens.Setup.Fields;

/// <summary>A date, typed like 2026-03-05 or 5 Mar 2026.</summary>
internal sealed class DateType : FieldType<LocalDate?>
{
    /// <inheritdoc/>
    public override string Show(LocalDate? value, SetupFacts facts) => DateText.Long(value!.Value);

    /// <inheritdoc/>
    public override string Typed(LocalDate? value, SetupFacts facts) => LocalDatePattern.Iso.Format(value!.Value);

    /// <inheritdoc/>
    public override Result<LocalDate?> Take(string text, SetupFacts facts) => One(text.Trim(), facts);

    /// <summary>Reads a date, or the word <c>today</c>.</summary>
    internal static Result<LocalDate?> One(string text, SetupFacts facts)
    {
        if (string.Equals(text, "today", StringComparison.OrdinalIgnoreCase))
        {
            return Result.Of<LocalDate?>(facts.Today);
        }

        Result<LocalDate> date = TypedDate.Parse(text, order: DateOrders.Of(facts.Currency));
        return date.Ok ? Result.Of<LocalDate?>(date.Value) : Result.Refused<LocalDate?>(date.Fault);
    }
}
