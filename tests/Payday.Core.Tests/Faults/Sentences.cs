using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Texts;

namespace Payday.Core.Tests.Faults;

/// <summary>What a person reads of a fault: cases are told apart in these tests by their sentences, values and all.</summary>
internal static class Sentences
{
    /// <summary>The sentence on a screen; null where nothing is wrong.</summary>
    public static string? Said(this Fault? fault, NumberStyle? style = null) => fault is null ? null : FaultTexts.Of(fault, style ?? NumberStyle.CommaPoint);

    /// <summary>All of them, one after the other.</summary>
    public static string? Said(this ImmutableArray<Fault> faults, NumberStyle? style = null) => faults.IsEmpty ? null : FaultTexts.Of(faults, style ?? NumberStyle.CommaPoint);

    /// <summary>What a person with a household file reads of a change that can't be.</summary>
    public static string InAFile(this Fault fault) => ChangeTexts.InAFile(fault, default);
}
