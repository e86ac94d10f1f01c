using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Screens.Forms;

/// <summary>Fields that hold an amount, a day or a few words, and what they hold.</summary>
internal static class TypedFields
{
    private const int LongestLine = 60;

    /// <summary>A field for an amount above zero; a sum is taken.</summary>
    public static FormField Amount(this BookSession session, string name, string label, string help) => new(name, label, help)
    {
        Fault = text => AmountIn(session, text) is var read && !read.Ok ? FaultTexts.Of(read.Fault, session.Style)
            : read.Value.IsPositive ? null : "Write an amount above zero.",
        Show = text => AmountIn(session, text) is { Ok: true } read ? read.Value.ToString(session.Style) : text,
    };

    /// <summary>A field for a day up to today; today is asked for anew while none is typed.</summary>
    public static FormField Day(this BookSession session, string name, string label, string help) => new(name, label, help)
    {
        Usual = LocalDatePattern.Iso.Format(session.Today),
        Fault = text => DayIn(session, text) is var read && !read.Ok ? FaultTexts.Of(read.Fault, session.Style)
            : read.Value > session.Today ? $"{DateText.Long(read.Value)} has not come yet; write today or a day before." : null,
        Keep = text => LocalDatePattern.Iso.Format(DayIn(session, text).Value),
        Show = text => DayIn(session, text) is { Ok: true } read ? DateText.Long(read.Value) : text,
    };

    /// <summary>A field for a few words.</summary>
    public static FormField Line(string name, string label, string help) => new(name, label, help)
    {
        Fault = text => text.Length > LongestLine ? $"At most {LongestLine} characters, please." : null,
    };

    /// <summary>The amount that a text stands for.</summary>
    public static Result<Money> AmountIn(BookSession session, string text) => Money.ParseSum(text, session.Book.Household.Currency, session.Style);

    /// <summary>The day that a text stands for; words such as <c>yesterday</c> are read as of today.</summary>
    public static Result<LocalDate> DayIn(BookSession session, string text) =>
        TypedDate.Parse(text, session.Today, session.Book.Household.Settings.DateOrder);
}
