using NodaTime;
using Payday.Core.Drafts;
using Payday.Screens.Setup.Fields;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>The field that ends an item.</summary>
internal static class EndField
{
    /// <summary>The date in a list, e.g. <c>8 Mar 2027</c>; empty for none.</summary>
    public static string Short(LocalDate? until) => until is { } date ? DateText.Day(date) : "";

    /// <summary>The field.</summary>
    public static SetupField<TItem> Of<TItem>(DraftMember<TItem, LocalDate?> until) =>
        SetupFields.Of("Until", until, new DateType(), "The last date on which it comes, like 2026-12-31; empty while it goes on.").Optional();
}
