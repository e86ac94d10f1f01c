using System.Collections.Immutable;

namespace Payday.Texts;

/// <summary>Why something can't be printed. One of the nested cases.</summary>
internal abstract record PrinterFault : EdgeFault
{
    private PrinterFault()
    {
    }

    /// <summary>The printer's name can't be one.</summary>
    public sealed record NoPlainName : PrinterFault;

    /// <summary>The machine has no command to print with.</summary>
    public sealed record NoCommand : PrinterFault;

    /// <summary>The command can't be run.</summary>
    public sealed record CantBeRun : PrinterFault;

    /// <summary>The command did not finish.</summary>
    public sealed record NotFinished : PrinterFault;

    /// <summary>The command failed.</summary>
    /// <param name="Complaint">The first line that it said, clean, to be handed on as it is; empty where it said none.</param>
    public sealed record Refused(string Complaint) : PrinterFault;

    /// <summary>There is no such size of paper.</summary>
    /// <param name="Known">Those that there are.</param>
    public sealed record NoSuchSize(ImmutableArray<string> Known) : PrinterFault
    {
        /// <inheritdoc/>
        public bool Equals(NoSuchSize? other) => other is not null && Known.SequenceEqual(other.Known);

        /// <inheritdoc/>
        public override int GetHashCode() => Known.Length;
    }
}
