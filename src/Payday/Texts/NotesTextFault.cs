using System.Collections.Immutable;

namespace Payday.Texts;

/// <summary>What is wrong with notes, or a machine, that were typed in a line. One of the nested cases.</summary>
internal abstract record NotesTextFault : EdgeFault
{
    /// <summary>It is no list of values and how many of each.</summary>
    /// <param name="Rest">From where on.</param>
    public sealed record NoNotes(string Rest) : NotesTextFault;

    /// <summary>More of one value than anybody has.</summary>
    /// <param name="Given">What was given.</param>
    /// <param name="Most">How many there may be.</param>
    public sealed record TooMany(string Given, int Most) : NotesTextFault;

    /// <summary>A value of zero or below.</summary>
    /// <param name="Given">What was given.</param>
    public sealed record Worthless(string Given) : NotesTextFault;

    /// <summary>A machine has more than one limit.</summary>
    public sealed record TwoLimits : NotesTextFault;

    /// <summary>A note of a machine isn't in use.</summary>
    /// <param name="Given">The note.</param>
    /// <param name="InUse">Those in use, as the household writes them.</param>
    public sealed record NotInUse(string Given, ImmutableArray<string> InUse) : NotesTextFault;

    /// <summary>A machine gives nothing.</summary>
    public sealed record NoMachineNotes : NotesTextFault;

    /// <summary>A machine's limit is no amount, or less than its smallest note.</summary>
    public sealed record NoLimit : NotesTextFault;
}
