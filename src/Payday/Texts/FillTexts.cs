using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Fills;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of a fill that can't be marked, or whose mark can't be taken back.</summary>
internal static class FillTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(FillFault fault, NumberStyle style) => fault switch
    {
        FillFault.NoSuchFill no => $"No closed payday has a fill of {DateText.Day(no.Day)} for that pot.",
        FillFault.MarkedAlready marked =>
            $"The fill of {marked.Pot} for {DateText.Day(marked.Day)} is marked {(marked.State == FillState.Done ? "done" : "skipped")} already.",
        FillFault.TooLittleAtHome little =>
            $"{little.Pot} has less than {little.Needed.ToString(style)} at home by now, so this fill can't be as it was; mark it done instead.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };
}
