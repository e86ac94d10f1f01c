using Payday.Core.Amounts;
using Payday.Core.DuePayments;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of dues that can't be ticked.</summary>
internal static class DueTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(DueFault fault, NumberStyle style) => fault switch
    {
        DueFault.NotOpen not => $"{not.Name} has nothing to pay that is due {DateText.Day(not.Due)}.",
        DueFault.StillToCome => "That day is still to come.",
        DueFault.BeforeStart before => $"{DateText.Day(before.Date)} is before the household began, {DateText.Day(before.Start)}.",
        DueFault.NotAboveZero => "What was paid is above zero; to waive what is due, free it.",
        DueFault.NotEnough few =>
            $"{few.Held.ToString(style)} is set aside for {few.Name} and the buffer has {few.Buffer.ToString(style)}, together less than {few.Amount.ToString(style)}; enter what they have, or move money to it first.",
        DueFault.MoreThanOwed more => $"{more.Owed.ToString(style)} is owed on {more.Name}; enter no more than that.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };
}
