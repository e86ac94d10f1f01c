using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Texts;

namespace Payday.Screens.Papers;

/// <summary>What is said beside the name of a file that can't be written.</summary>
internal static class SavingTexts
{
    /// <summary>A sentence, or null where it was written.</summary>
    public static string? Of(Fault? fault, NumberStyle style) => fault switch
    {
        null => null,
        FileThere there => there.Saying("give another name"),
        _ => FaultTexts.Of(fault, style),
    };
}
