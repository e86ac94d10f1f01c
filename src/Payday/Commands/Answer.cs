using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>What a command has to say. One of the nested cases.</summary>
internal abstract record Answer
{
    private Answer()
    {
    }

    /// <summary>
    /// Whether the book or a file is another now. Then the exit code tells of that, also where the answer itself is lost: a
    /// script that took a lost answer for a refusal would do it twice.
    /// </summary>
    public bool HasChanged { get; init; }

    /// <summary>It was done.</summary>
    /// <param name="Lines">For a person.</param>
    /// <param name="Json">For a script.</param>
    public sealed record Done(IReadOnlyList<string> Lines, string Json) : Answer;

    /// <summary>It was done, and there is something to do: exit code 1, for scripts that ask.</summary>
    /// <param name="Lines">For a person.</param>
    /// <param name="Json">For a script.</param>
    public sealed record Waiting(IReadOnlyList<string> Lines, string Json) : Answer;

    /// <summary>It was refused; nothing was changed.</summary>
    /// <param name="Reasons">A sentence each: what is wrong, where, and how to mend it.</param>
    /// <param name="Kind">What sort of refusal, for a script; see <see cref="FaultKind"/>.</param>
    public sealed record Refused(IReadOnlyList<string> Reasons, string Kind = FaultKind.Refused) : Answer;

    /// <summary>The command was not called right.</summary>
    /// <param name="Reason">What is wrong and how to call it.</param>
    /// <param name="Kind">What sort of mistake, for a script; see <see cref="FaultKind"/>.</param>
    public sealed record WrongUse(string Reason, string Kind = FaultKind.Usage) : Answer;

    /// <summary>Refused for one reason.</summary>
    public static Answer Because(string reason) => new Refused([reason]);

    /// <summary>Refused for a fault.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="style">How the household writes numbers.</param>
    public static Answer Because(Fault fault, NumberStyle style = default) => new Refused([FaultTexts.Of(fault, style)], FaultKind.Of(fault));

    /// <summary>Not called right, for a fault.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="style">How the household writes numbers.</param>
    public static Answer Wrong(Fault fault, NumberStyle style = default) => new WrongUse(FaultTexts.Of(fault, style), FaultKind.Of(fault));
}
