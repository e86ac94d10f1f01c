using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Statements.Taking;
using Payday.Store.Files;
using Payday.Tests.Slips;
using Payday.Texts;

namespace Payday.Tests.Texts;

/// <summary>Each case in which core, store, statements or program refuse has a sentence: a new one without is found here, and not by a person at the screen.</summary>
public class FaultTextTests
{
    // What is wrong with a draft or the text of a file is said by forms and files; see what is tried of those.
    private static IEnumerable<Type> Types => new[] { typeof(Fault), typeof(StoreFault), typeof(EdgeFault), typeof(PlanFault) }
        .SelectMany(one => one.Assembly.GetTypes())
        .Where(type => type.IsSubclassOf(typeof(Fault)) && !type.IsAbstract && type.Namespace != typeof(DraftFault).Namespace)
        .Where(type => type.Assembly != typeof(StoreFault).Assembly || type.IsSubclassOf(typeof(StoreFault)))
        .OrderBy(type => type.FullName, StringComparer.Ordinal);

    [Fact]
    public void Of_EachFault_IsAsRecorded() => Golden.Equal(
        "fault-texts", Types.Select(type => $"{type.FullName!["Payday.".Length..].Replace('+', '.')}: {FaultTexts.Of(FaultSamples.Of(type), NumberStyle.CommaPoint)}"));
}
