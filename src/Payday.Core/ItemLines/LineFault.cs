using Payday.Core.Faults;

namespace Payday.Core.ItemLines;

/// <summary>Why a line can't be read as an item.</summary>
public abstract record LineFault : Fault
{
    /// <summary>It has no amount behind a name.</summary>
    /// <param name="Line">The line.</param>
    public sealed record NoAmount(string Line) : LineFault;

    /// <summary>What stands behind the amount can't be read.</summary>
    /// <param name="Line">The line.</param>
    /// <param name="Rest">What stands behind the amount.</param>
    public sealed record RestUnread(string Line, string Rest) : LineFault;

    /// <summary>It would be a bill whose name has a rate: it is a debt's line, of which the balance would be in no figure.</summary>
    /// <param name="Line">The line.</param>
    public sealed record ReadsAsDebt(string Line) : LineFault;

    /// <summary>A part of it can be read two ways, so it is asked about.</summary>
    /// <param name="Line">The line.</param>
    /// <param name="Part">The part, as it was written.</param>
    /// <param name="One">One way to write what it may mean, so that it can mean nothing else.</param>
    /// <param name="Other">The other way.</param>
    public sealed record TwoWays(string Line, string Part, string One, string Other) : LineFault;
}
