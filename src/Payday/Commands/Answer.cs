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
    public sealed record Refused(IReadOnlyList<string> Reasons) : Answer;

    /// <summary>The command was not called right.</summary>
    /// <param name="Reason">What is wrong and how to call it.</param>
    public sealed record WrongUse(string Reason) : Answer;

    /// <summary>Refused for one reason.</summary>
    public static Answer Because(string reason) => new Refused([reason]);
}
