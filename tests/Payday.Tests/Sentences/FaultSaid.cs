using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Texts;

namespace Payday.Tests.Sentences;

/// <summary>What a person reads of a fault.</summary>
internal static class FaultSaid
{
    /// <summary>The sentence on a screen; null where nothing is wrong.</summary>
    public static string? Said(this Fault? fault, NumberStyle style = default) => fault is null ? null : FaultTexts.Of(fault, style);
}
