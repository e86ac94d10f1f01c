using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Slips;

/// <summary>The rule every filling sheet keeps: notes in the pots = withdrawn + from home - back to the bank - left loose, value by value.</summary>
internal static class FillingSheetCheck
{
    /// <summary>The note values that don't tally, largest first; none for a sheet that is right.</summary>
    public static ImmutableArray<NoteDifference> Differences(FillingSheetData data)
    {
        ArgumentNullException.ThrowIfNull(data);
        NoteLine[] inPots = [.. data.Rows.SelectMany(row => row.Notes)];
        return
        [
            .. NoteCounts.ByValue([.. inPots, .. data.Withdrawn, .. data.FromHome, .. data.ToBank, .. data.Loose])
                .Select(line => new NoteDifference(
                    line.Value,
                    NoteCounts.Of(line.Value, inPots),
                    NoteCounts.Of(line.Value, data.Withdrawn) + NoteCounts.Of(line.Value, data.FromHome)
                        - NoteCounts.Of(line.Value, data.ToBank) - NoteCounts.Of(line.Value, data.Loose)))
                .Where(difference => difference.InPots != difference.AtHand),
        ];
    }
}

/// <summary>A note value that doesn't tally.</summary>
/// <param name="Value">What one note is worth.</param>
/// <param name="InPots">How many the sheet puts into pots.</param>
/// <param name="AtHand">How many there are to put: withdrawn and from home, less those back to the bank.</param>
internal readonly record struct NoteDifference(Money Value, long InPots, long AtHand);
