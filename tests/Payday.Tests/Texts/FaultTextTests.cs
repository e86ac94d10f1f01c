using System.Runtime.CompilerServices;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Texts;

namespace Payday.Tests.Texts;

/// <summary>Each case in which the core refuses has a sentence: a new one without is found here, and not by a person at the screen.</summary>
public class FaultTextTests
{
    public static TheoryData<string> Faults => [.. Types.Select(type => type.FullName!)];

    // A file's faults are said by the store; see what is tried of household files.
    private static IEnumerable<Type> Types => typeof(Fault).Assembly.GetTypes()
        .Where(type => type.IsSubclassOf(typeof(Fault)) && !type.IsAbstract && type.Namespace != typeof(DraftFault).Namespace);

    [Theory]
    [MemberData(nameof(Faults))]
    public void Of_AnyFaultOfTheCore_HasAText(string name)
    {
        // Its values are not there, so the sentence may fail; but that there is one is seen before.
        var fault = (Fault)RuntimeHelpers.GetUninitializedObject(typeof(Fault).Assembly.GetType(name)!);
        Exception? met = Record.Exception(() => FaultTexts.Of(fault, NumberStyle.CommaPoint));

        Assert.False(met is ArgumentOutOfRangeException { ActualValue: Fault none } && ReferenceEquals(none, fault), $"{name} has no text.");
    }
}
