using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Slips;

/// <summary>A total of the filling sheet, by which the notes are seen to tally with the slip.</summary>
/// <param name="Label">What was added up.</param>
/// <param name="Notes">By value, largest first.</param>
/// <param name="Amount">What they are worth.</param>
internal sealed record FillingTotal(string Label, ImmutableArray<NoteLine> Notes, Money Amount)
{
    /// <summary>The notes in the pots first, then where they come from.</summary>
    public static ImmutableArray<FillingTotal> Of(FillingSheetData data)
    {
        FillingTotal Total(string label, IEnumerable<NoteLine> notes)
        {
            ImmutableArray<NoteLine> byValue = NoteCounts.ByValue(notes);
            return new FillingTotal(label, byValue, NoteCounts.Worth(byValue, data.Currency));
        }

        FillingTotal inPots = Total("In the pots", data.Rows.SelectMany(row => row.Notes));
        FillingTotal withdrawn = Total(data.AsReceived ? "From the bank" : "Withdrawn", data.Withdrawn);
        FillingTotal fromHome = Total("+ from home", data.FromHome);
        FillingTotal toBank = Total("- back to bank", data.ToBank);
        FillingTotal loose = Total("- left loose", data.Loose);
        return [inPots, withdrawn, .. new[] { fromHome, toBank, loose }.Where(total => !total.Notes.IsEmpty)];
    }
}
