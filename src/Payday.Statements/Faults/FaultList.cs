using System.Collections.Immutable;
using Payday.Statements.Texts;

namespace Payday.Statements.Faults;

/// <summary>Gathers faults, up to <see cref="ReadingLimits.MostFaults"/>.</summary>
internal sealed class FaultList
{
    private readonly ImmutableArray<StatementFault>.Builder faults = ImmutableArray.CreateBuilder<StatementFault>();

    /// <summary>How many there are.</summary>
    public int Count => faults.Count;

    /// <summary>Adds one; texts are cleaned and cut.</summary>
    public void Add(FaultKind kind, int line, string found = "", string wanted = "")
    {
        if (faults.Count < ReadingLimits.MostFaults)
        {
            faults.Add(new StatementFault(kind, line, CleanText.Echo(found), CleanText.Echo(wanted)));
        }
    }

    /// <summary>All, in the order found.</summary>
    public ImmutableArray<StatementFault> ToImmutable() => faults.ToImmutable();
}
