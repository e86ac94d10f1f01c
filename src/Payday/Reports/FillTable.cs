using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Fills;
using Payday.Text;

namespace Payday.Reports;

/// <summary>The fills of the wallet, for the command and the screen alike.</summary>
internal static class FillTable
{
    /// <summary>The columns.</summary>
    public static ImmutableArray<TextColumn> Columns =>
        [Report.Names("Pot"), new("week of"), Report.Amounts("fill"), new("notes") { Shrinks = true, MinWidth = 12 }, new("")];

    /// <summary>The cells of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="state">What became of it, in a word or two.</param>
    /// <param name="style">How numbers are written.</param>
    public static ImmutableArray<string> Cells(FillPart part, string state, NumberStyle style) =>
        [part.Pot.Name, DateText.Weekday(part.Key.Day), part.Moves.ToString(style), FillText.Notes(part, style), state];
}
