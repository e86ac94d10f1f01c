using Payday.Core.ItemLines;

namespace Payday.Texts;

/// <summary>What is said of a line that can't be read as an item.</summary>
internal static class LineTexts
{
    public static string Of(LineFault fault) => fault switch
    {
        LineFault.NoAmount no => $"'{no.Line}' has no amount behind a name; write it like Rent 1450 1st.",
        LineFault.RestUnread rest => $"'{rest.Rest}' in '{rest.Line}' can't be read; leave it out, or fill it in by the form.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };
}
