using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.ClosedPaydays;

/// <summary>Why a movement isn't undone alone.</summary>
public abstract record UndoingFault : Fault
{
    /// <summary>The reason is missing or too long.</summary>
    /// <param name="Most">The longest reason, in characters.</param>
    public sealed record ReasonLength(int Most) : UndoingFault;

    /// <summary>It moves notes.</summary>
    /// <param name="Number">The movement.</param>
    public sealed record MovesNotes(long Number) : UndoingFault;

    /// <summary>It is an opening balance.</summary>
    /// <param name="Number">The movement.</param>
    public sealed record IsOpening(long Number) : UndoingFault;

    /// <summary>A part of its money has gone on since.</summary>
    /// <param name="Rest">What would be left where the money was, below zero.</param>
    public sealed record GoneOn(Money Rest) : UndoingFault;
}
