using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Text;
using Payday.Texts;

namespace Payday.Slips;

/// <summary>What slips and sheets have in common.</summary>
internal static class PaperParts
{
    /// <summary>The narrowest paper, in columns: that of a receipt printer.</summary>
    public const int Narrowest = 32;

    /// <summary>The widest paper, in columns.</summary>
    public const int Widest = 80;

    /// <summary>A title and the date, the person's own lines, and an empty line.</summary>
    public static ImmutableArray<string> Head(string title, LocalDate date, ImmutableArray<string> headLines, int width) =>
    [
        TextColumns.Ends(title, DateText.Long(date), width),
        .. headLines.SelectMany(line => TextWrap.Lines(CleanText.OneLine(line), width)),
        "",
    ];

    /// <summary>That a debt is to be paid, e.g. <c>To pay yourself: 476.46 to Dental plan</c>.</summary>
    public static string ToPay(KeptBackLine line, NumberStyle style) => $"To pay yourself: {line.Amount.ToString(style)} to {CleanText.OneLine(line.Pot)}";

    /// <summary>The caution for home, off what is above it.</summary>
    public static ImmutableArray<string> AtHome(int width) => ["", .. TextWrap.Lines(Cautions.Cash, width)];

    /// <summary>Refuses a width no paper has.</summary>
    public static void ThrowIfNoWidth(int width)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, Narrowest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(width, Widest);
    }
}
