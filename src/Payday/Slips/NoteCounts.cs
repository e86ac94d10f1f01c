using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Slips;

/// <summary>Notes brought together by value, and how they are written.</summary>
internal static class NoteCounts
{
    /// <summary>One line for each value with any notes, largest first.</summary>
    public static ImmutableArray<NoteLine> ByValue(IEnumerable<NoteLine> lines) =>
    [
        .. lines.Where(line => line.Count > 0)
            .GroupBy(line => line.Value)
            .OrderByDescending(group => group.Key)
            .Select(group => new NoteLine(group.Key, group.Sum(line => line.Count))),
    ];

    /// <summary>How many notes of a value there are.</summary>
    public static long Of(Money value, IEnumerable<NoteLine> lines) =>
        lines.Where(line => line.Value == value).Sum(line => line.Count);

    /// <summary>What the notes are worth.</summary>
    public static Money Worth(IEnumerable<NoteLine> lines, Currency currency) =>
        Money.Sum(lines.Select(line => line.Amount), currency);

    /// <summary>A note as people say it: whole units without decimals, e.g. <c>20</c> or <c>1,000</c>.</summary>
    public static string Name(Money value, NumberStyle style) =>
        value.MinorUnits % value.Currency.MinorPerUnit == 0
            ? Number(value.MinorUnits / value.Currency.MinorPerUnit, style)
            : value.ToString(style);

    /// <summary>Notes in words, e.g. <c>3 x 20, 1 x 5</c>; <c>nothing</c> for none.</summary>
    public static string Words(IEnumerable<NoteLine> lines, NumberStyle style)
    {
        ImmutableArray<NoteLine> byValue = ByValue(lines);
        return byValue.IsEmpty
            ? "nothing"
            : string.Join(", ", byValue.Select(line => $"{Number(line.Count, style)} x {Name(line.Value, style)}"));
    }

    /// <summary>A count with the group marks of the style.</summary>
    /// <remarks>Written as an amount of no currency, which has no decimals.</remarks>
    public static string Number(long count, NumberStyle style) => Money.FromMinorUnits(count, default).ToString(style);
}
