using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Fills;

namespace Payday.Reports;

/// <summary>Fills of the wallet in words.</summary>
internal static class FillText
{
    /// <summary>The notes of a fill; where it moves less than was planned for it, of how much that is left.</summary>
    public static string Notes(FillPart part, NumberStyle style) => part.Moves == part.Amount
        ? NoteText.Listed(part.Notes, part.Amount.Currency, style)
        : $"left of {part.Amount.ToString(style)}";

    /// <summary>Where the rest of a fill went that moves less than was planned for it.</summary>
    public static string Rest(FillPart part) => part.IsAssumed
        ? "the rest was taken from it already, to pay back a card purchase or for something else"
        : "the rest was used at home before";

    /// <summary>What several fills move together, e.g. <c>70.00 in 3 x 20, 1 x 10</c>; without notes where one moves less than was planned.</summary>
    public static string Together(ImmutableArray<FillPart> parts, Currency currency, NumberStyle style)
    {
        string sum = Money.Sum(parts.Select(part => part.Moves), currency).ToString(style);
        return parts.All(part => part.Moves == part.Amount)
            ? $"{sum} in {NoteText.Listed(Core.Cash.Notes.Sum(parts.Select(part => part.Notes)), currency, style)}"
            : sum;
    }
}
