using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;

namespace Payday.Reports;

/// <summary>Notes by value, in words and for scripts.</summary>
internal static class NoteText
{
    /// <summary>The value of a note or coin as a household writes it, without decimals where it has none.</summary>
    public static string Value(long note, Currency currency, NumberStyle style) => style.Written(Money.FromMinorUnits(note, currency).ToPiece());

    /// <summary>E.g. <c>3 x 20, 1 x 5</c>, the largest first; <c>none</c> for none.</summary>
    public static string Listed(ImmutableSortedDictionary<long, int> notes, Currency currency, NumberStyle style) => notes.IsEmpty
        ? "none"
        : string.Join(", ", notes.Reverse().Select(note =>
            string.Create(CultureInfo.InvariantCulture, $"{note.Value} x {Value(note.Key, currency, style)}")));

    /// <summary>By value as files hold it, the largest first.</summary>
    public static Dictionary<string, int> Counts(ImmutableSortedDictionary<long, int> notes, Currency currency) =>
        notes.Reverse().ToDictionary(note => Value(note.Key, currency, NumberStyle.Plain), note => note.Value);
}
