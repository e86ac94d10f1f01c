using Payday.Core.Amounts;
using Payday.Core.Receiving;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of notes that the bank gave in the place of those on the slip.</summary>
internal static class ReceivingTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(ReceivingFault fault, NumberStyle style) => fault switch
    {
        ReceivingFault.NoSlip => "No payday is closed yet, so no slip was taken to the bank; close one first.",
        ReceivingFault.NothingAsked none => $"The slip of {DateText.Day(none.Payday)} asks for nothing, so there are no notes to enter.",
        ReceivingFault.BeforePayday before =>
            $"The slip is of {DateText.Day(before.Payday)}, so its notes can't have been fetched on {DateText.Day(before.Date)}; give that day or a later one.",
        ReceivingFault.NoSuchPiece piece =>
            $"No note or coin of {piece.Value.ToString(style)} is in use; write one that is, or add it in the household's settings.",
        ReceivingFault.AsAsked asked => $"That is what the slip of {DateText.Day(asked.Payday)} asks for, so nothing has to be entered.",
        ReceivingFault.TooMuch much =>
            $"The bank gave {much.More.ToString(style)} more than the slip asks for, and the buffer in the account and what is not in notes for cash pots lack {much.Lacking.ToString(style)} of that. "
            + "Count again; if it is right, move money to the buffer first, then enter it.",
        ReceivingFault.NothingEntered => "No other notes were entered for the last closed payday, so there is nothing to take back.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };
}
