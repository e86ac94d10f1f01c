using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.HouseholdChanges;
using Payday.Texts;

namespace Payday.Core.Tests.Faults;

/// <summary>What a person reads of a fault: cases are told apart in these tests by their sentences, values and all.</summary>
internal static class Sentences
{
    /// <summary>The sentence on a screen; null where nothing is wrong.</summary>
    public static string? Said(this Fault? fault, NumberStyle style = default) => fault is null ? null : FaultTexts.Of(fault, style);

    /// <summary>All of them, one after the other.</summary>
    public static string Said(this IEnumerable<Fault> faults, NumberStyle style = default) => FaultTexts.Of(faults, style);

    /// <summary>What a person with a household file reads of a change that can't be.</summary>
    public static string InAFile(this ChangeFault fault) => ChangeTexts.InAFile(fault, default);
}
